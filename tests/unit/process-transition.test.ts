import { expect, test, vi } from 'vitest';
import { processMachine } from '../../src/lib/core/process/chart/machine';
import { fold } from '../../src/lib/core/process/job';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import { handPlan } from '../fixtures/plan';

test('a job is folded by starting the machine for it once, however long its log', () => {
	const plan = handPlan();
	const crew = { worker: 'worker', supervisor: 'supervisor' };
	const { log } = rehearseJob(plan, { until: 'end', startAt: '2026-03-02T14:00:00Z', crew });
	const starts = vi.spyOn(processMachine, 'getInitialSnapshot');
	expect(fold(plan, log).snapshot.status).toBe('done');
	expect(log.length).toBeGreaterThan(40);
	expect(starts).toHaveBeenCalledTimes(1);
	starts.mockRestore();
});
