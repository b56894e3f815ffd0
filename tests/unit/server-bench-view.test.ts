import { expect, test, vi } from 'vitest';
import { processMachine } from '../../src/lib/core/process/chart/machine';
import { benchView } from '../../src/lib/core/bench/bench-view';
import { textsOfBench } from '../../src/lib/server/content';
import { getJob } from '../../src/lib/server/jobs.repository';
import { CREW, storedJob } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

test('a second look at the bench folds nothing, and offers the last entry to who made it', async () => {
	const db = await testStore();
	const { jobId } = await storedJob(db, 'build');
	const job = await getJob(db, jobId);
	if (!job) throw new Error('no job');
	const last = job.log.at(-1);
	const look = (id: string) =>
		benchView(job, {
			viewer: { id, name: 'Ben Marsh', role: 'mold maker' },
			names: {},
			at: job.state.lastAt,
			zone: 'UTC',
			system: 'SI',
			texts: textsOfBench,
			training: null,
			actId: 'none'
		});
	look(CREW.worker);
	const steps = vi.spyOn(processMachine, 'transition');
	expect(look(last?.event.by ?? '').undo === null).toBe(last?.event.by === CREW.supervisor);
	expect(look('somebody-else').undo).toBeNull();
	expect(steps).not.toHaveBeenCalled();
	steps.mockRestore();
});
