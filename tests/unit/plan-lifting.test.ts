import { describe, expect, test } from 'vitest';
import { liftingLimit } from '../../src/lib/core/laws/lifting';
import { liftingTaskLimit, type LiftingTask } from '../../src/lib/core/laws/lifting-task';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { testInputs, testShop } from '../fixtures/materials';

const task: LiftingTask = {
	origin: { horizontalMm: 400, heightMm: 900 },
	destination: { horizontalMm: 400, heightMm: 150 },
	twistDeg: 0,
	liftsPerMin: 0.2,
	duration: 'up to 1 h',
	coupling: 'fair'
};

describe('a lift from the bench to a pallet', () => {
	test('is limited where it is set down: 9.9 kg, not the 13.7 kg of its start', () => {
		// By the manual's metric multipliers: 23 · 0.625 · 0.82 · 0.88 · 0.95.
		const limit = liftingTaskLimit(task);
		expect(limit.decidedAt).toBe('destination');
		expect(limit.rwlG).toBeCloseTo(9854, 0);
		const { rwlG } = liftingLimit({
			...task,
			horizontalMm: 400,
			originHeightMm: 900,
			travelMm: 250
		});
		expect(rwlG).toBeCloseTo(13_728, 0);
	});

	test('is judged at its start when that is the worse end', () => {
		const up = liftingTaskLimit({ ...task, origin: task.destination, destination: task.origin });
		expect(up.decidedAt).toBe('origin');
	});

	test('is forbidden when either end is', () => {
		const far = { horizontalMm: 700, heightMm: 150 };
		expect(liftingTaskLimit({ ...task, destination: far }).forbidden).toHaveLength(1);
	});

	test('is that of the plan, with the end that decides in its trace', () => {
		const figure = makePlan(testInputs()).figures['lifting.recommendedG'];
		expect(figure?.note).toContain('set down on the pallet');
		expect(figure?.inputs.map(({ symbol }) => symbol)).toContain('V_destination');
	});
});

describe('who lifts', () => {
	const plan = makePlan(testInputs());
	const lifts = plan.lifting?.lifts ?? [];

	test('is decided by the upper end of the weight, and says so', () => {
		for (const [i, lift] of lifts.entries()) {
			const high = plan.figures[`lifting.lifts.${i}.massG`]?.high ?? 0;
			expect(high).toBeGreaterThan(lift.massG);
			expect(lift.reason).toMatch(/^Judged at the upper end of its likely weight/);
			if (lift.limitG !== null) expect(lift.limitG).toBeGreaterThanOrEqual(high);
		}
	});

	test('is said in the units of the shop', () => {
		const us = makePlan(testInputs({ shop: { ...testShop, units: 'US' } }));
		for (const { reason } of us.lifting?.lifts ?? []) {
			expect(reason).toContain('lb');
			expect(reason).not.toContain('kg');
		}
	});
});
