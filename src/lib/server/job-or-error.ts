import { error } from '@sveltejs/kit';
import type { Db } from './database';
import { isDamaged, type JobFile } from './job-file';
import { findJob } from './jobs.repository';
import { listPeople } from './people.repository';

/** The job a page is about. @throws HttpError 404 when there is none, 503 when its record is damaged */
export async function jobOrError(db: Db, id: string): Promise<JobFile> {
	const job = await findJob(db, id);
	if (!job) error(404, 'There is no such mold in this shop. The board lists them all.');
	if (isDamaged(job)) {
		error(503, `This mold's record is damaged and is not worked on. ${job.damage}`);
	}
	return job;
}

/** Name of every person the shop ever had, by id. */
export async function namesById(db: Db): Promise<Record<string, string>> {
	return Object.fromEntries((await listPeople(db)).map(({ id, name }) => [id, name]));
}
