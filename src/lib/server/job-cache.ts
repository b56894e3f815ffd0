import type { Db } from './database';
import { isDamaged, readJobFile, type DamagedJob, type JobFile } from './job-file';

/**
 * Jobs already verified and folded. At each use the store is asked for the last entry known and what came
 * after it, so that what another server appended is seen.
 */
export type JobCache = Map<string, JobFile>;

/** Jobs kept whole. */
export const LARGEST = 2000;
const caches = new WeakMap<Db, JobCache>();

/** The cache that belongs to this database; a transaction in it is given its parent's. */
export function jobCacheOf(db: Db): JobCache {
	let cache = caches.get(db);
	if (!cache) caches.set(db, (cache = new Map()));
	return cache;
}

/** A job as the store has it at this moment; only what is new since the last reading is read and folded. */
export async function cachedJob(
	db: Db,
	cache: JobCache,
	id: string
): Promise<JobFile | DamagedJob | null> {
	const job = await readJobFile(db, id, cache.get(id));
	if (job && !isDamaged(job)) remember(cache, job);
	else cache.delete(id);
	return job;
}

/** Keeps the job; the one unused for longest goes when there are too many. */
export function remember(cache: JobCache, job: JobFile): void {
	cache.delete(job.id);
	cache.set(job.id, job);
	if (cache.size > LARGEST) cache.delete(cache.keys().next().value ?? job.id);
}
