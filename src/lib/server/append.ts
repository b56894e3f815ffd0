import { sealEvent } from '$lib/core/log/chain';
import type { EventType, ProcessEvent } from '$lib/core/process/events';
import { advance, contextOf } from '$lib/core/process/job';
import { missingPhoto, unfitPerson } from './append-rights';
import { conflictWith, foreignTwin, refused, twinOf } from './append-twin';
import { commitTogether } from './commit-together';
import type { Db } from './database';
import { isTaken } from './dialect';
import { insertEvent, type StoredEvent } from './event-rows';
import { cachedJob, jobCacheOf, remember } from './job-cache';
import { isDamaged, type DamagedJob, type JobFile } from './job-file';
import { publishAppended } from './live';
import { announce } from './live-servers';
import { nativeSha256 } from './native-sha256';
import type { FieldProblem } from './problem';
import { readableActs } from './readable-acts';
import { withTraining } from './training/asked-training';

export interface Append {
	jobId: string;
	/** Chosen by the sender: the same id twice is one event. */
	id: string;
	/** The place it wants: the last number its sender had seen, plus one. */
	seq: number;
	event: ProcessEvent;
	recordedAt: string;
	/** It is done at this moment: when the clock was set back since the last act, at that act's time. */
	isNow?: boolean;
	/** Set by `sign.ts` alone, after a PIN was checked. */
	isSigned?: boolean;
}

export type AppendResult =
	| { status: 'appended'; stored: StoredEvent }
	| { status: 'duplicate'; stored: StoredEvent }
	/** `since`: what was appended in its place and after; `allowed`: what the job would take now. */
	| { status: 'conflict'; headSeq: number; since: StoredEvent[]; allowed: EventType[] }
	/** `field`: the one place of the act that cannot be taken, when it is one. */
	| { status: 'refused'; reason: string; allowed: string[]; field?: string }
	/** No act at all: where it is wrong, and what would be accepted. */
	| { status: 'unfit'; errors: FieldProblem[] }
	| { status: 'no job' };

export type Written = Extract<AppendResult, { status: 'appended' | 'duplicate' }>;

export function isWritten<R extends { status: string }>(
	result: R
): result is Extract<R, { status: 'appended' | 'duplicate' }> {
	return result.status === 'appended' || result.status === 'duplicate';
}

/** Not looked at: an act before it in the same list was not taken. */
export interface Held {
	status: 'held';
}

/** Only with a PIN. */
export const SIGNED_TYPES: readonly EventType[] = [
	'hold.signed',
	'hold.sentBack',
	'mold.rejected',
	'deviation.decided',
	'trouble.decided',
	'act.takenBack',
	'job.abandoned'
];

/** How far a bench's clock may run ahead of the server's. */
const LARGEST_LEAD_S = 30;

/**
 * Appends one act to a job, if the process takes it: read, judge and write in one transaction. What
 * is answered with "appended" is on the disk.
 */
export async function appendEvent(db: Db, append: Append): Promise<AppendResult> {
	const [result] = await appendEvents(db, append.jobId, [append]);
	if (!result || result.status === 'held') throw new Error('an act without an answer');
	return result;
}

/**
 * Appends acts to one job in the order given, each judged as `appendEvent` does and all in one transaction.
 * After one that is not taken the rest is not looked at: it may have counted on it, and its number may fit
 * by chance.
 */
export async function appendEvents(
	db: Db,
	jobId: string,
	acts: readonly Omit<Append, 'jobId'>[]
): Promise<Array<AppendResult | Held>> {
	const { acts: readable, fault } = readableActs(acts);
	const held = acts.map(() => ({ status: 'held' as const }));
	if (fault && readable.length === 0) return [fault, ...held.slice(1)];
	const cache = jobCacheOf(db);
	const tryOnce = (idMayBeTaken: boolean) =>
		commitTogether(db, `job ${jobId}`, async (trx): Promise<Judged> => {
			const results: AppendResult[] = [];
			let job = await cachedJob(trx, cache, jobId);
			for (const act of readable) {
				const judged = await judge(trx, job, { ...act, jobId }, idMayBeTaken);
				results.push(judged.result);
				if (!isWritten(judged.result)) break;
				job = judged.job ?? job;
			}
			return { results, job };
		});
	// The store itself says when an act of another job has this id; only then that one is looked for.
	const { results, job } = await tryOnce(false).catch((error: unknown) => {
		if (isTaken(error)) return tryOnce(true);
		throw error;
	});
	const appended = results.filter((result) => result.status === 'appended');
	if (appended.length > 0 && job && !isDamaged(job)) remember(cache, job);
	for (const { stored } of appended) publishAppended({ jobId, seq: stored.seq });
	const isFaultNext = results.length === readable.length && results.every((one) => isWritten(one));
	const told = fault && isFaultNext ? [...results, fault] : results;
	return [...told, ...held.slice(told.length)];
}

interface Judged {
	results: AppendResult[];
	/** The job with what was appended, for the cache once it is committed. */
	job: JobFile | DamagedJob | null;
}

interface JudgedOne {
	result: AppendResult;
	job?: JobFile;
}

async function judge(
	trx: Db,
	job: JobFile | DamagedJob | null,
	act: Append,
	idMayBeTaken: boolean
): Promise<JudgedOne> {
	if (!job) return { result: { status: 'no job' } };
	if (isDamaged(job)) {
		return {
			result: refused(`This job's record is damaged and takes no more acts. ${job.damage}`)
		};
	}
	const known = idMayBeTaken ? (twinOf(job, act) ?? (await foreignTwin(trx, act.id))) : null;
	if (known) return { result: known };
	const judged = await judgeNew(trx, job, act);
	// Whether it was sent before is looked for only where it changes the answer: the store takes no id twice.
	return judged.result.status === 'appended'
		? judged
		: { result: twinOf(job, act) ?? judged.result };
}

/** Judges an act as one that was not sent before, and writes it when it is taken. */
async function judgeNew(trx: Db, job: JobFile, append: Append): Promise<JudgedOne> {
	const { jobId, id, seq, recordedAt } = append;
	if (seq !== job.headSeq + 1) return { result: conflictWith(job, seq) };

	const timed = append.isNow ? { ...append.event, at: momentFor(job, recordedAt) } : append.event;
	const event = await withTraining(trx, timed, contextOf(job.state));
	const objection =
		objectionTo({ ...append, event }, job) ?? (await unfitPerson(trx, event, job.state));
	if (objection) return { result: refused(objection) };
	const missing = await missingPhoto(trx, event);
	if (missing) return { result: { status: 'refused', allowed: [], ...missing } };
	const step = advance(job.state, { id, seq, event });
	if (!step.ok) return { result: refused(step.reason, step.allowed) };

	const unsealed = { jobId, seq, id, recordedAt, event, prevHash: job.headHash };
	const stored = sealEvent(unsealed, nativeSha256);
	await insertEvent(trx, stored);
	await announce(trx, { jobId, seq });
	const grown = {
		...job,
		log: [...job.log, stored],
		state: step.state,
		headSeq: seq,
		headHash: stored.hash
	};
	return { result: { status: 'appended', stored }, job: grown };
}

/** The server's instant, or the last act's when the clock was set back since. */
function momentFor(job: JobFile, recordedAt: string): string {
	const lastAt = job.log.at(-1)?.event.at ?? recordedAt;
	return Date.parse(lastAt) > Date.parse(recordedAt) ? lastAt : recordedAt;
}

function objectionTo({ event, recordedAt, isSigned }: Append, job: JobFile): string | null {
	const { at, type } = event;
	if (type === 'job.opened') return 'A job is opened once, when its plan is accepted.';
	if (SIGNED_TYPES.includes(type) && !isSigned) {
		return type === 'job.abandoned'
			? 'A mold is abandoned with a PIN, on the page of the mold.'
			: 'A supervisor signs this with a PIN, on the signing page.';
	}
	const lastAt = job.log.at(-1)?.event.at ?? at;
	if (Date.parse(at) < Date.parse(lastAt)) {
		return `The time given, ${at}, lies before the last act, ${lastAt}. Accepted: that time or later.`;
	}
	const isAhead = Date.parse(at) > Date.parse(recordedAt) + LARGEST_LEAD_S * 1000;
	// The last act's own time is taken even when the server's clock was set back since.
	if (isAhead && at !== lastAt) {
		return `The time given, ${at}, lies ahead of the server's clock, ${recordedAt}. Accepted: up to ${LARGEST_LEAD_S} seconds ahead.`;
	}
	return null;
}
