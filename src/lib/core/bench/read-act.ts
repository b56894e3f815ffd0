import { ENGLISH, type Words } from '../language/words';
import { ACT_FIELDS } from '../process/act-fields';
import { benchStep } from '../process/bench-step';
import type { EventType } from '../process/events';
import { contextOf, type JobState } from '../process/job';
import { inCoreUnits } from '../process/typed-units';
import type { UnitSystem } from '../quantity/display';
import type { BenchTexts } from './bench-texts';
import { fieldErrors } from './field-errors';
import { eventFromForm, filledRows, isEventType } from './form-event';
import { notDone, type NotDone } from './not-done';
import { questionBefore } from './question-before';

interface Reading {
	state: JobState;
	by: string;
	at: string;
	texts: BenchTexts;
	words?: Words;
}

export type ReadAct =
	| { ok: true; type: EventType; label: string; system: UnitSystem; event: Record<string, unknown> }
	/** `status`: as HTTP has it. */
	| { ok: false; status: 400 | 409 | 422; notDone: NotDone };

/**
 * One act from a form of the bench, in core units, or what is wrong with its fields. Whether the
 * process takes it is not judged here.
 */
export function readAct(
	form: FormData,
	{ state, by, at, texts, words = ENGLISH }: Reading
): ReadAct {
	const type = String(form.get('type') ?? '');
	if (!isEventType(type)) {
		const refusal = words.errors.unknownAct;
		return { ok: false, status: 400, notDone: notDone({ type, label: type, refusal }, form) };
	}
	const label = words.acts[type];
	const system: UnitSystem = form.get('units') === 'US' ? 'US' : 'SI';
	const event = inCoreUnits(eventFromForm(type, form, words.locale), system);
	if (event.type === 'briefing.read') {
		const text = texts.briefings[String(event.briefing)];
		if (!text || text.hash !== event.contentHash) {
			const refusal = words.errors.changedBriefing;
			return { ok: false, status: 409, notDone: notDone({ type, label, refusal }, form) };
		}
	}
	const step = benchStep(state, { by, at }, words);
	// Undoing is offered beside every step, and by none of them.
	const fields =
		step.acts.find((act) => act.type === type)?.fields ??
		ACT_FIELDS[type]?.(contextOf(state), words) ??
		[];
	const errors = atFormRows(fieldErrors(event, fields, system, words), form);
	if (Object.keys(errors).length > 0) {
		return { ok: false, status: 422, notDone: notDone({ type, label, errors }, form) };
	}
	const question =
		form.get('knowing') === 'true' ? null : questionBefore(contextOf(state), event, at, words);
	return question === null
		? { ok: true, type, label, system, event }
		: { ok: false, status: 409, notDone: notDone({ type, label, question }, form) };
}

/** Errors of a list at the rows in which they stand in the form, where empty rows count too. */
function atFormRows(errors: Record<string, string>, form: FormData): Record<string, string> {
	return Object.fromEntries(
		Object.entries(errors).map(([key, message]) => {
			const [, name, index, rest] = /^(\w+)\[(\d+)\](.*)$/.exec(key) ?? [];
			if (name === undefined) return [key, message];
			return [`${name}[${filledRows(form, name)[Number(index)] ?? index}]${rest}`, message];
		})
	);
}
