import { setImmediate as turn } from 'node:timers/promises';
import { z } from 'zod';
import type { Db } from '../database';
import { isDamaged, readJobFile } from '../job-file';
import { listPatterns } from '../patterns.repository';
import { listPeople } from '../people.repository';
import { getShop } from '../shop.repository';
import { listSheets } from '../sheets.repository';

/** How the pages read each plain table: every row through its schema. */
const READERS: ReadonlyArray<[table: string, read: (db: Db) => Promise<unknown>]> = [
	['shop', getShop],
	['person', listPeople],
	['sheet', (db) => listSheets(db, { withRetired: true })],
	['pattern', listPatterns]
];

/** What is wrong with a row of the plain tables, by the schemas of who reads them; null when nothing is. */
export async function rowFault(db: Db): Promise<string | null> {
	for (const [table, read] of READERS) {
		try {
			await read(db);
		} catch (error) {
			if (!(error instanceof z.ZodError)) throw error;
			const [issue] = error.issues;
			const place = issue?.path.length ? ` at ${issue.path.join('.')}` : '';
			return `tables/${table}.jsonl has a row that does not fit its schema${place}: ${issue?.message ?? 'unknown'}`;
		}
	}
	return null;
}

/** Which job's log does not fold to a state; null when all do. */
export async function foldFault(
	db: Db,
	jobs: ReadonlyArray<{ jobId: string }>
): Promise<string | null> {
	for (const { jobId } of jobs) {
		await turn();
		const job = await readJobFile(db, jobId);
		if (!job) return `job ${jobId} is not there`;
		if (isDamaged(job)) return `job ${jobId}: ${job.damage.replace(/\.$/, '')}`;
	}
	return null;
}
