import type { TroubleId } from '../content/vocabulary';
import { ENGLISH } from '../language/words';
import type { ProcessContext } from '../process/context';
import type { Act, ActField } from '../process/step';
import { isHurting, needsSupervisor, urgencyOf } from '../process/troubles';
import type { BenchTexts } from './bench-texts';

type Texts = BenchTexts['troubles'];

/** What the text on a trouble says, and who ends it. */
export function troubleText(id: TroubleId, c: ProcessContext, troubles: Texts) {
	const text = troubles[id];
	return {
		title: text?.title ?? '',
		sign: text?.sign ?? '',
		act: text?.act ?? '',
		severity: text?.severity ?? 'stop',
		html: text?.html ?? '',
		needsSupervisor: needsSupervisor(id, c.plan.processVersion)
	};
}

/** The steps to take at once, without what is read later: a text on what hurts up to the end of its last numbered list. */
function stepsOf(id: TroubleId, troubles: Texts): string {
	const html = troubles[id]?.html ?? '';
	return isHurting(id) ? html.slice(0, html.lastIndexOf('</ol>') + 5) : '';
}

/** Every open trouble with what to do about it, a body before things, the latest first among equals. */
export function openTroubles(c: ProcessContext, troubles: Texts, w = ENGLISH) {
	const open = [...c.troublesBefore, ...(c.trouble ? [c.trouble] : [])].reverse();
	return open
		.toSorted((a, b) => urgencyOf(b.id) - urgencyOf(a.id))
		.map((trouble) => {
			const { act, severity, needsSupervisor } = troubleText(trouble.id, c, troubles);
			const { id, at, by, place, note } = trouble;
			const name = w.titles.troubles[id];
			return {
				id,
				at,
				by,
				place,
				note,
				name,
				act,
				severity,
				needsSupervisor,
				steps: stepsOf(id, troubles)
			};
		});
}

/** Reporting a trouble, with what to do about each where it is chosen: before anything is sent. */
export function withInstructions(act: Act, troubles: Texts): Act {
	if (act.type !== 'trouble.reported') return act;
	return { ...act, fields: act.fields.map((field) => instructed(field, troubles)) };
}

function instructed(field: ActField, troubles: Texts): ActField {
	if (field.name !== 'trouble' || !field.choices) return field;
	const choices = field.choices.map((choice) => {
		const id = choice.value as TroubleId;
		return { ...choice, more: { act: troubles[id]?.act ?? '', html: stepsOf(id, troubles) } };
	});
	return { ...field, choices };
}
