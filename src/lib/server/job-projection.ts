import type { Db } from './database';
import { cachedJob, jobCacheOf, LARGEST } from './job-cache';
import { readJobFile } from './job-file';
import { lineOf, type JobLine } from './job-line';

/** What was made of each job, beside the hash of the entry it was made at. */
type Projection<T> = Map<string, { head: string | null; value: T }>;

const projections = new WeakMap<Db, WeakMap<object, Projection<unknown>>>();

/**
 * What `project` makes of every job, newest first; a damaged job is a line of its own and hides none of the
 * others. Kept for as long as the job's last entry is the same, so that only what has grown is read and
 * folded anew. Give the same function each time; what it makes should be small.
 *
 * @param before - called before each job that is read; ends it early with what there is by answering false
 */
export async function projectJobs<T>(
	db: Db,
	project: (line: JobLine) => T,
	{ before }: { before?: () => Promise<boolean> } = {}
): Promise<T[]> {
	const kept = projectionOf<T>(db, project);
	const cache = jobCacheOf(db);
	const values: T[] = [];
	for (const [index, { id, head }] of (await heads(db)).entries()) {
		const known = kept.get(id);
		if (known && known.head === head) {
			values.push(known.value);
			continue;
		}
		if (before && !(await before())) break;
		const cached = cache.get(id);
		// More than are kept whole would only push the newest out.
		const read = () => (index < LARGEST ? cachedJob(db, cache, id) : readJobFile(db, id));
		const job = cached?.headHash === head ? cached : await read();
		if (!job) continue;
		const value = project(lineOf(job));
		// Of a damaged job nothing is kept: what can be read of it is looked at each time.
		if ('headHash' in job) kept.set(id, { head: job.headHash, value });
		values.push(value);
	}
	return values;
}

function projectionOf<T>(db: Db, project: (line: JobLine) => T): Projection<T> {
	let ofDb = projections.get(db);
	if (!ofDb) projections.set(db, (ofDb = new WeakMap()));
	let kept = ofDb.get(project) as Projection<T> | undefined;
	if (!kept) ofDb.set(project, (kept = new Map()));
	return kept;
}

/** Every job with the hash of its last entry. One look into the index for each, however long its log. */
async function heads(db: Db): Promise<Array<{ id: string; head: string | null }>> {
	return db
		.selectFrom('job')
		.select((e) => [
			'job.id',
			e
				.selectFrom('event')
				.select('event.hash')
				.whereRef('event.job_id', '=', 'job.id')
				.orderBy('event.seq', 'desc')
				.limit(1)
				.as('head')
		])
		.orderBy('job.opened_at', 'desc')
		.orderBy('job.id')
		.execute();
}
