import type { StoredEvent as Stored } from '$lib/core/log/chain';
import type { ProcessEvent } from '$lib/core/process/events';
import type { Db } from './database';

export type StoredEvent = Stored<ProcessEvent>;

/** A job's events after number `after`, in order, as they were written. */
export async function readEvents(db: Db, jobId: string, after = 0): Promise<StoredEvent[]> {
	const rows = await db
		.selectFrom('event')
		.selectAll()
		.where('job_id', '=', jobId)
		.where('seq', '>', after)
		.orderBy('seq')
		.execute();
	return rows.map((row) => ({
		jobId: row.job_id,
		seq: row.seq,
		id: row.id,
		recordedAt: row.recorded_at,
		// Parsed before it was written; the chain of hashes shows any change since.
		event: JSON.parse(row.event) as ProcessEvent,
		prevHash: row.prev_hash,
		hash: row.hash
	}));
}

/** Writes one sealed event. @throws when its place or its id is taken */
export async function insertEvent(db: Db, stored: StoredEvent): Promise<void> {
	await db
		.insertInto('event')
		.values({
			id: stored.id,
			job_id: stored.jobId,
			seq: stored.seq,
			event: JSON.stringify(stored.event),
			recorded_at: stored.recordedAt,
			prev_hash: stored.prevHash,
			hash: stored.hash
		})
		.execute();
}
