import { setImmediate as turn } from 'node:timers/promises';
import type { Db } from './database';
import { cachedJob, jobCacheOf } from './job-cache';

/**
 * Verifies and folds every job once, newest first, so that the first board after a start need not. Between
 * two jobs whatever else waits has its turn. Ends early when `signal` is aborted.
 *
 * @returns how many jobs were read, damaged ones too
 */
export async function warmJobs(db: Db, signal?: AbortSignal): Promise<number> {
	const rows = await db
		.selectFrom('job')
		.select('id')
		.orderBy('opened_at', 'desc')
		.orderBy('id')
		.execute();
	const cache = jobCacheOf(db);
	let count = 0;
	for (const { id } of rows) {
		await turn();
		if (signal?.aborted) break;
		await cachedJob(db, cache, id);
		count += 1;
	}
	return count;
}
