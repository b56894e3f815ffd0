import { ENGLISH, type Words } from '../language/words';
import { ACT_FIELDS } from '../process/act-fields';
import { benchStep } from '../process/bench-step';
import type { EventType } from '../process/events';
import { isLaying } from '../process/context';
import { contextOf, type JobState } from '../process/job';
import type { ActField } from '../process/step';
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
	/** What is asked besides, by whoever knows more than the log tells. */
	alsoAsked?: string | null;
}

export type ReadAct =
	| {
			ok: true;
			type: EventType;
			label: string;
			system: UnitSystem;
			event: Record<string, unknown>;
			/** What the act asked for. */
			fields: ActField[];
	  }
	/** `status`: as HTTP has it. */
	| { ok: false; status: 400 | 409 | 422; notDone: NotDone };

/**
 * One act from a form of the bench, in core units, or what is wrong with its fields. Whether the
 * process takes it is not judged here.
 */
export function readAct(
	form: FormData,
	{ state, by, at, texts, words = ENGLISH, alsoAsked = null }: Reading
): ReadAct {
	const type = String(form.get('type') ?? '');
	if (!isEventType(type)) {
		const refusal = words.errors.unknownAct;
		return { ok: false, status: 400, notDone: notDone({ type, label: type, refusal }, form) };
	}
	const label = words.acts[type];
	const system: UnitSystem = form.get('units') === 'US' ? 'US' : 'SI';
	const typed = inCoreUnits(eventFromForm(type, form, words.locale), system);
	const event = type === 'cup.weighed' && isLaying(contextOf(state)) ? poured(typed, form) : typed;
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
	const questions =
		form.get('knowing') === 'true'
			? []
			: [alsoAsked, questionBefore(contextOf(state), event, at, words)].filter(Boolean);
	const question = questions.join('. ');
	return question === ''
		? { ok: true, type, label, system, event, fields }
		: { ok: false, status: 409, notDone: notDone({ type, label, question }, form) };
}

/** Of the next cup one part may stand weighed alone, so that the pot life does not run: what is left empty is not in it. */
function poured(event: Record<string, unknown>, form: FormData): Record<string, unknown> {
	const isIn = (part: string) => form.get(`massesG.${part}`) !== '';
	const only = (of: unknown) =>
		Object.fromEntries(Object.entries(of ?? {}).filter(([part]) => isIn(part)));
	return { ...event, massesG: only(event.massesG), lots: only(event.lots) };
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
