import { setImmediate as turn } from 'node:timers/promises';
import type { Db } from './database';
import type { JobLine } from './job-line';
import { projectJobs } from './job-projection';

/**
 * Verifies and folds every job once, newest first, and makes `project` of it, so that the first board after a
 * start need not. Between two jobs whatever else waits has its turn. Ends early when `signal` is aborted.
 *
 * @returns how many jobs were read, damaged ones too
 */
export async function warmJobs(
	db: Db,
	project: (line: JobLine) => unknown,
	signal?: AbortSignal
): Promise<number> {
	const before = async () => {
		await turn();
		return !signal?.aborted;
	};
	return (await projectJobs(db, project, { before })).length;
}
