import type { ProcessEvent } from '$lib/core/process/events';
import { appendEvent, appendEvents, type Append, type AppendResult, type Held } from './append';
import { now } from './clock';
import type { Db } from './database';

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
	return appendEvent(db, { ...filledIn(act), jobId: act.jobId });
}

/** Appends several acts of one job, in order, in the same way. */
export async function postActsOf(
	db: Db,
	jobId: string,
	acts: readonly Act[]
): Promise<Array<AppendResult | Held>> {
	return appendEvents(db, jobId, acts.map(filledIn));
}

function filledIn({ id, seq, by, event, isSigned }: Act): Omit<Append, 'jobId'> {
	const recordedAt = now();
	const isNow = event.at === undefined;
	return {
		id,
		seq,
		// `appendEvents` parses it before anything else.
		event: { ...event, ...(isNow ? { at: recordedAt } : {}), by } as ProcessEvent,
		recordedAt,
		isNow,
		...(isSigned ? { isSigned } : {})
	};
}
