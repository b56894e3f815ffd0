import { canonicalJson } from '$lib/core/log/canonical';
import { sealEvent } from '$lib/core/log/chain';
import { eventSchema, type EventType, type ProcessEvent } from '$lib/core/process/events';
import { advance } from '$lib/core/process/job';
import { allowedTypes } from '$lib/core/process/refusal';
import { missingPhoto, unfitPerson } from './append-rights';
import type { Db } from './database';
import { exclusively, isTaken } from './dialect';
import { isWellFormed } from './well-formed';
import { insertEvent, type StoredEvent } from './event-rows';
import { cachedJob, jobCacheOf, remember, type JobCache } from './job-cache';
import { isDamaged, type JobFile } from './job-file';
import { publishAppended } from './live';
import { announce } from './live-servers';

export interface Append {
	jobId: string;
	/** Chosen by the sender: the same id twice is one event. */
	id: string;
	/** The place it wants: the last number its sender had seen, plus one. */
	seq: number;
	event: ProcessEvent;
	recordedAt: string;
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
	| { status: 'no job' };

/** Only with a PIN. */
export const SIGNED_TYPES: readonly EventType[] = [
	'hold.signed',
	'hold.sentBack',
	'mold.rejected',
	'deviation.decided',
	'job.abandoned'
];

/** Whoever was away for longer reads the log from its own number on. */
const MOST_TOLD = 100;
/** How far a bench's clock may run ahead of the server's. */
const LARGEST_LEAD_S = 30;

const refused = (reason: string, allowed: string[] = []): AppendResult => ({
	status: 'refused',
	reason,
	allowed
});

/**
 * Appends one act to a job, if the process takes it: read, judge and write in one transaction. What
 * is answered with "appended" is on the disk.
 */
export async function appendEvent(db: Db, append: Append): Promise<AppendResult> {
	const parsed = eventSchema.safeParse(append.event);
	if (!parsed.success) {
		const [issue] = parsed.error.issues;
		return refused(`${issue?.path.join('.') || 'event'}: ${issue?.message ?? 'not understood'}`);
	}
	if (!isWellFormed(parsed.data)) return refused('A text holds half a character. Type it again.');
	const cache = jobCacheOf(db);
	const act = { ...append, event: parsed.data };
	const tryOnce = () => exclusively(db, `job ${append.jobId}`, (trx) => judge(trx, cache, act));
	// Another job took this id in the same moment: looked at once more, it is an id of another job.
	const { result, job } = await tryOnce().catch((error: unknown) => {
		if (isTaken(error)) return tryOnce();
		throw error;
	});
	if (result.status === 'appended') {
		if (job) remember(cache, job);
		publishAppended({ jobId: append.jobId, seq: result.stored.seq });
	}
	return result;
}

interface Judged {
	result: AppendResult;
	/** The job with the event on it, for the cache once it is committed. */
	job?: JobFile;
}

async function judge(trx: Db, cache: JobCache, append: Append): Promise<Judged> {
	const { jobId, id, seq, event, recordedAt } = append;
	const job = await cachedJob(trx, cache, jobId);
	if (!job) return { result: { status: 'no job' } };
	if (isDamaged(job)) {
		return {
			result: refused(`This job's record is damaged and takes no more acts. ${job.damage}`)
		};
	}
	const twin = await twinOf(trx, job, append);
	if (twin) return { result: twin };
	if (seq !== job.headSeq + 1) return { result: conflictWith(job, seq) };

	const objection = objectionTo(append, job) ?? (await unfitPerson(trx, event, job.state));
	if (objection) return { result: refused(objection) };
	const missing = await missingPhoto(trx, event);
	if (missing) return { result: { status: 'refused', allowed: [], ...missing } };
	const step = advance(job.state, { id, seq, event });
	if (!step.ok) return { result: refused(step.reason, step.allowed) };

	const stored = sealEvent({ jobId, seq, id, recordedAt, event, prevHash: job.headHash });
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

function conflictWith(job: JobFile, seq: number): AppendResult {
	const { headSeq, log, state } = job;
	const since = log.slice(seq - 1).slice(0, MOST_TOLD);
	return { status: 'conflict', headSeq, since, allowed: allowedTypes(state) };
}

/** What to answer when the id was used before. */
async function twinOf(
	trx: Db,
	job: JobFile,
	{ id, seq, event }: Append
): Promise<AppendResult | null> {
	const stored = job.log.find((s) => s.id === id);
	if (stored) {
		if (isSameAct(stored.event, event)) return { status: 'duplicate', stored };
		// Typed anew after an answer that was lost: whoever sent it must see what stands already.
		return seq === stored.seq
			? conflictWith(job, seq)
			: refused(`The id ${id} belongs to another act of this job. Send this one under a new id.`);
	}
	const other = await trx.selectFrom('event').select('id').where('id', '=', id).executeTakeFirst();
	return other ? refused(`The id ${id} belongs to an act of another job.`) : null;
}

/** Sent again it may carry another time; anything else that differs was typed anew. */
function isSameAct(stored: ProcessEvent, sent: ProcessEvent): boolean {
	return canonicalJson({ ...stored, at: '' }) === canonicalJson({ ...sent, at: '' });
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
