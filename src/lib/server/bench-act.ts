import { fail } from '@sveltejs/kit';
import { errorsAt } from '$lib/core/bench/field-errors';
import { notDone } from '$lib/core/bench/not-done';
import { readAct } from '$lib/core/bench/read-act';
import { refusalInWords } from '$lib/core/bench/refusal-in-words';
import type { Words } from '$lib/core/language/words';
import type { ProcessContext } from '$lib/core/process/context';
import { clockTime } from '$lib/core/process/shop-time';
import type { ProcessEvent } from '$lib/core/process/events';
import { contextOf } from '$lib/core/process/job';
import { refusalOf } from '$lib/core/process/refusal';
import { undo } from '$lib/core/process/undo';
import { unfitPerson } from './append-rights';
import { postAct } from './act';
import { actIdSchema } from './act-id';
import { now } from './clock';
import { benchTextsByLang } from './content';
import type { Db } from './database';
import { jobOrError, namesById } from './job-or-error';
import { mixerState } from './training/asked-training';

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
	const alsoAsked = await mixerQuestion(db, form, contextOf(state), { at, words });
	const read = readAct(form, { state, by, at, texts, words, alsoAsked });
	if (!read.ok) return fail(read.status, read.notDone);
	const { type, label, system, event, fields } = read;

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
				const errors = errorsAt([pathOf(result.field)], fields, system, words);
				return fail(422, notDone({ type, label, errors }, form));
			}
			const reason = await refusalIn(db, { jobId, by, at, event, words, reason: result.reason });
			const { briefings } = texts;
			const refusal = refusalInWords(reason, { zone, system, at, briefings, words });
			return fail(409, notDone({ type, label, refusal }, form));
		}
		case 'unfit': {
			const paths = result.errors.map(({ path }) => pathOf(path));
			const errors = errorsAt(paths, fields, system, words);
			return fail(422, notDone({ type, label, errors }, form));
		}
		case 'no job':
			return fail(404, notDone({ type, label, refusal: words.errors.noMold }, form));
	}
}

/** "points.0.place", as the append names a place, in the parts it has in the act. */
const pathOf = (place: string): PropertyKey[] =>
	place.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key));

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

/** What is asked before a cup is entered as mixed by somebody whose training is not in date; null when it is. */
async function mixerQuestion(
	db: Db,
	form: FormData,
	context: ProcessContext,
	{ at, words }: { at: string; words: Words }
): Promise<string | null> {
	const [type, mixedBy] = [form.get('type'), form.get('mixedBy')];
	if (type !== 'cup.mixed' || typeof mixedBy !== 'string' || mixedBy === '') return null;
	const state = await mixerState(db, { type, at, by: '', mixedBy }, context, words);
	return state && words.questions.mixerNotInDate(state);
}
