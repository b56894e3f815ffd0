import type { Migration } from './migration';

/** Jobs newest first without a look at their plans, which are long: the board asks for it at every turn. */
export const jobsInOrder: Migration = {
	version: 6,
	name: 'jobs in order',
	async up(db) {
		await db.schema.createIndex('job_opened').on('job').columns(['opened_at desc', 'id']).execute();
	}
};
