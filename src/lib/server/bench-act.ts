import { fail } from '@sveltejs/kit';
import { notDone } from '$lib/core/bench/not-done';
import { readAct } from '$lib/core/bench/read-act';
import { refusalInWords } from '$lib/core/bench/refusal-in-words';
import { ENTRY_LABELS } from '$lib/core/process/entry-labels';
import { clockTime } from '$lib/core/process/shop-time';
import { postAct } from './act';
import { actIdSchema } from './act-id';
import { now } from './clock';
import { textsOfBench } from './content';
import type { Db } from './database';
import { jobOrError, namesById } from './job-or-error';

interface Posting {
	jobId: string;
	by: string;
	zone: string;
	form: FormData;
}

/** Takes one act from a form of the bench: reads it, checks it, appends it. */
export async function actFromForm(db: Db, { jobId, by, zone, form }: Posting) {
	const seq = Number(form.get('seq'));
	const id = actIdSchema.safeParse(form.get('id')).data;
	if (!Number.isInteger(seq) || id === undefined) {
		const type = String(form.get('type') ?? '');
		const refusal = 'The page sent something the bench does not know. Load it again.';
		return fail(400, notDone({ type, label: type, refusal }, form));
	}
	const { state } = await jobOrError(db, jobId);
	const at = now();
	const read = readAct(form, { state, by, at, texts: textsOfBench });
	if (!read.ok) return fail(read.status, read.notDone);
	const { type, label, system, event } = read;

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
		case 'refused': {
			if (result.field !== undefined) {
				const [field = ''] = result.field.split('.');
				return fail(422, notDone({ type, label, errors: { [field]: result.reason } }, form));
			}
			const { briefings } = textsOfBench;
			const refusal = refusalInWords(result.reason, { zone, system, at, briefings });
			return fail(409, notDone({ type, label, refusal }, form));
		}
		case 'no job':
			return fail(404, notDone({ type, label, refusal: 'There is no such mold.' }, form));
	}
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
