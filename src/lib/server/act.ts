import type { ProcessEvent } from '$lib/core/process/events';
import { appendEvent, type AppendResult } from './append';
import { now } from './clock';
import type { Db } from './database';
import { findJob } from './jobs.repository';
import { isDamaged } from './job-file';

export interface Act {
	jobId: string;
	id: string;
	seq: number;
	/** Who does it: the person of the session. */
	by: string;
	/** An event without `by`; without `at` it was done at this moment. */
	event: Record<string, unknown>;
	isSigned?: boolean;
}

/** Appends an act as a screen or a client of the API sends it: who and when are filled in here. */
export async function postAct(db: Db, act: Act): Promise<AppendResult> {
	const { jobId, id, seq, by, isSigned } = act;
	const recordedAt = now();
	const at = act.event.at ?? (await momentFor(db, jobId, recordedAt));
	// `appendEvent` parses it before anything else.
	const event = { ...act.event, at, by } as ProcessEvent;
	return appendEvent(db, { jobId, id, seq, event, recordedAt, ...(isSigned ? { isSigned } : {}) });
}

/** The server's instant, or the last act's when the clock was set back since. */
async function momentFor(db: Db, jobId: string, recordedAt: string): Promise<string> {
	const job = await findJob(db, jobId);
	const lastAt = job && !isDamaged(job) ? job.log.at(-1)?.event.at : undefined;
	return lastAt !== undefined && Date.parse(lastAt) > Date.parse(recordedAt) ? lastAt : recordedAt;
}
