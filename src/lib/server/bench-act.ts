import { fail } from '@sveltejs/kit';
import { ACT_LABELS } from '$lib/core/process/act-labels';
import { ENTRY_LABELS } from '$lib/core/process/entry-labels';
import { benchStep } from '$lib/core/process/bench-step';
import type { UnitSystem } from '$lib/core/quantity/display';
import { clockTime, withShopTimes } from '$lib/core/process/shop-time';
import { inCoreUnits, withCustomary } from '$lib/core/process/typed-units';
import { postAct } from './act';
import { actIdSchema } from './act-id';
import { now } from './clock';
import { withBriefingTitles } from './briefing-titles';
import { briefings } from './content';
import type { Db } from './database';
import { fieldErrors } from './field-errors';
import { eventFromForm, filledRows, isEventType } from './form-event';
import { jobOrError, namesById } from './job-or-error';

interface Posting {
	jobId: string;
	by: string;
	zone: string;
	form: FormData;
}

/** What the bench says when an act was not written: everything typed comes back with it. */
export interface NotDone {
	type: string;
	label: string;
	values: Record<string, string>;
	errors: Record<string, string>;
	/** Why the process does not take it. */
	refusal: string | null;
	/** What others entered meanwhile, when somebody was faster. */
	meanwhile: string[] | null;
}

/** Takes one act from a form of the bench: reads it, checks it, appends it. */
export async function actFromForm(db: Db, { jobId, by, zone, form }: Posting) {
	const type = String(form.get('type') ?? '');
	const seq = Number(form.get('seq'));
	const id = actIdSchema.safeParse(form.get('id')).data;
	if (!isEventType(type) || !Number.isInteger(seq) || id === undefined) {
		const refusal = 'The page sent something the bench does not know. Load it again.';
		return fail(400, notDone({ type, label: type, refusal }, form));
	}
	const job = await jobOrError(db, jobId);
	const label = ACT_LABELS[type];
	const system: UnitSystem = form.get('units') === 'US' ? 'US' : 'SI';
	const event = inCoreUnits(eventFromForm(type, form), system);
	if (event.type === 'briefing.read') {
		const text = briefings.get(String(event.briefing));
		if (!text || text.hash !== event.contentHash) {
			const refusal = 'This briefing was changed while you read. Read it once more.';
			return fail(409, notDone({ type, label, refusal }, form));
		}
	}
	const step = benchStep(job.state, { by, at: now() });
	const fields = step.acts.find((act) => act.type === type)?.fields ?? [];
	const errors = atFormRows(fieldErrors(event, fields, system), form);
	if (Object.keys(errors).length > 0) return fail(422, notDone({ type, label, errors }, form));

	const result = await postAct(db, { jobId, id, seq: seq + 1, by, event });
	switch (result.status) {
		case 'appended':
		case 'duplicate':
			return { type, label, done: clockTime(result.stored.event.at, zone) };
		case 'conflict':
			return fail(
				409,
				notDone({ type, label, meanwhile: await since(db, { jobId, seq, zone }) }, form)
			);
		case 'refused':
			if (result.field !== undefined) {
				const [field = ''] = result.field.split('.');
				return fail(422, notDone({ type, label, errors: { [field]: result.reason } }, form));
			}
			return fail(
				409,
				notDone(
					{
						type,
						label,
						refusal: withBriefingTitles(
							withCustomary(withShopTimes(result.reason, zone, now()), system)
						)
					},
					form
				)
			);
		case 'no job':
			return fail(404, notDone({ type, label, refusal: 'There is no such mold.' }, form));
	}
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

function notDone(
	given: Partial<NotDone> & Pick<NotDone, 'type' | 'label'>,
	form: FormData
): NotDone {
	const own = ['type', 'seq', 'id', 'units'];
	// More than one value under a name, as photos have, comes back as one text.
	const values = [...new Set(form.keys())].flatMap((key) => {
		const texts = form.getAll(key).filter((value) => typeof value === 'string');
		return texts.length > 0 && !own.includes(key) ? [[key, texts.join(' ')] as const] : [];
	});
	return {
		errors: {},
		refusal: null,
		meanwhile: null,
		...given,
		values: Object.fromEntries(values)
	};
}

/** What was entered after the number the page had seen, one line each. */
async function since(
	db: Db,
	{ jobId, seq, zone }: { jobId: string; seq: number; zone: string }
): Promise<string[]> {
	const { log } = await jobOrError(db, jobId);
	const names = await namesById(db);
	return log
		.filter((stored) => stored.seq > seq)
		.map(({ event }) => {
			const who = names[event.by] ?? 'somebody';
			return `${clockTime(event.at, zone)}, ${who}: ${ENTRY_LABELS[event.type]}`;
		});
}
