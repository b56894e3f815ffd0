import type { StoredEvent as Stored } from '$lib/core/log/chain';
import type { ProcessEvent } from '$lib/core/process/events';
import type { Database, Db } from './database';
import { keptQuery } from './kept-query';

export type StoredEvent = Stored<ProcessEvent>;

const rowsAfter = keptQuery((db, { jobId, after }: { jobId: string; after: number }) =>
	db
		.selectFrom('event')
		.selectAll()
		.where('job_id', '=', jobId)
		.where('seq', '>', after)
		.orderBy('seq')
);

/** A job's events after number `after`, in order, as they were written. */
export async function readEvents(db: Db, jobId: string, after = 0): Promise<StoredEvent[]> {
	const rows = await rowsAfter(db, { jobId, after });
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

const insertRow = keptQuery((db, row: Database['event']) => db.insertInto('event').values(row));

/** Writes one sealed event. @throws when its place or its id is taken */
export async function insertEvent(db: Db, stored: StoredEvent): Promise<void> {
	await insertRow(db, {
		id: stored.id,
		job_id: stored.jobId,
		seq: stored.seq,
		event: JSON.stringify(stored.event),
		recorded_at: stored.recordedAt,
		prev_hash: stored.prevHash,
		hash: stored.hash
	});
}
