import { addSeconds } from '../../src/lib/core/process/instant';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import { writeJob } from '../../src/lib/server/demo-write';
import { openStore } from '../../src/lib/server/store';
import { handPlan } from '../fixtures/plan';
import { seedShop } from './seeded-shop';

/** A job at its first cup, in the hands of the worker, who has read everything. */
export async function jobAtFirstCup(dataDir: string) {
	const { supervisor, worker } = await seedShop(dataDir, { jobs: 0 });
	const jobId = 'job-at-first-cup';
	const plan = handPlan();
	const { log } = rehearseJob(plan, {
		jobId,
		until: 'build',
		startAt: addSeconds(new Date().toISOString(), -6 * 3600),
		crew: { worker: worker.id, supervisor: supervisor.id }
	});
	const db = await openStore(dataDir);
	await writeJob(db, { jobId, plan, log });
	await db.destroy();
	return { worker, supervisor, jobId };
}
