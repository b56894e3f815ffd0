import { fail } from '@sveltejs/kit';
import { notDone } from '$lib/core/bench/not-done';
import { readAct } from '$lib/core/bench/read-act';
import { refusalInWords } from '$lib/core/bench/refusal-in-words';
import type { Words } from '$lib/core/language/words';
import { clockTime } from '$lib/core/process/shop-time';
import type { ProcessEvent } from '$lib/core/process/events';
import { refusalOf } from '$lib/core/process/refusal';
import { undo } from '$lib/core/process/undo';
import { unfitPerson } from './append-rights';
import { postAct } from './act';
import { actIdSchema } from './act-id';
import { now } from './clock';
import { benchTextsByLang } from './content';
import type { Db } from './database';
import { jobOrError, namesById } from './job-or-error';

interface Posting {
	jobId: string;
	by: string;
	zone: string;
	form: FormData;
	/** The language of whoever posts it. */
	words: Words;
}

/** Takes one act from a form of the bench: reads it, checks it, appends it. */
export async function actFromForm(db: Db, { jobId, by, zone, form, words }: Posting) {
	const texts = benchTextsByLang[words.lang];
	const seq = Number(form.get('seq'));
	const id = actIdSchema.safeParse(form.get('id')).data;
	if (!Number.isInteger(seq) || id === undefined) {
		const type = String(form.get('type') ?? '');
		const refusal = words.errors.unknownAct;
		return fail(400, notDone({ type, label: type, refusal }, form));
	}
	const { state } = await jobOrError(db, jobId);
	const at = now();
	const read = readAct(form, { state, by, at, texts, words });
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
				notDone({ type, label, meanwhile: await since(db, { jobId, seq, zone, words }) }, form)
			);
		case 'refused': {
			if (result.field !== undefined) {
				const [field = ''] = result.field.split('.');
				return fail(422, notDone({ type, label, errors: { [field]: result.reason } }, form));
			}
			const reason = await refusalIn(db, { jobId, by, at, event, words, reason: result.reason });
			const { briefings } = texts;
			const refusal = refusalInWords(reason, { zone, system, at, briefings, words });
			return fail(409, notDone({ type, label, refusal }, form));
		}
		case 'unfit': {
			const errors = Object.fromEntries(
				result.errors.map(({ path, message }) => [path.split('.', 1)[0] ?? '', message])
			);
			return fail(422, notDone({ type, label, errors }, form));
		}
		case 'no job':
			return fail(404, notDone({ type, label, refusal: words.errors.noMold }, form));
	}
}

/** What was entered after the number the page had seen, one line each. */
async function since(
	db: Db,
	{ jobId, seq, zone, words }: { jobId: string; seq: number; zone: string; words: Words }
): Promise<string[]> {
	const { log } = await jobOrError(db, jobId);
	const names = await namesById(db);
	return log
		.filter((stored) => stored.seq > seq)
		.map(({ event }) => {
			const who = names[event.by] ?? words.errors.somebody;
			return `${clockTime(event.at, zone)}, ${who}: ${words.entries[event.type]}`;
		});
}

interface Refused {
	jobId: string;
	by: string;
	at: string;
	event: Record<string, unknown>;
	words: Words;
	/** As the append said it, in English. */
	reason: string;
}

/** A refusal in the reader's words: judged anew on the job as it stands, as long as it is the same refusal. */
async function refusalIn(
	db: Db,
	{ jobId, by, at, event, words, reason }: Refused
): Promise<string> {
	if (words.lang === 'en') return reason;
	const { state } = await jobOrError(db, jobId);
	const act = { ...event, at, by } as ProcessEvent;
	const rights = await unfitPerson(db, act, state);
	if (rights === reason) return (await unfitPerson(db, act, state, words)) ?? reason;
	if (act.type === 'act.undone') {
		const logged = { id: '', seq: 0, event: act };
		const said = undo(state, logged, act, words);
		return said.ok ? reason : said.reason;
	}
	return refusalOf(state, act)?.reason === reason
		? (refusalOf(state, act, words)?.reason ?? reason)
		: reason;
}
