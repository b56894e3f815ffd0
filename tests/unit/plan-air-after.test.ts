import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { airAfter } from '../../src/lib/screen/plan/air-after';
import { testInputs, testSheet } from '../fixtures/materials';

const base = testInputs();
const film = {
	...testSheet('film-pva'),
	volatiles: [{ substance: 'ethanol' as const, fraction: 0.5 }]
};
const plan = makePlan(testInputs({ materials: { ...base.materials, film } }));

describe('vapor that outlasts its step', () => {
	test('is named with the time at which it is down to a tenth of its limit, and the work it runs into', () => {
		const found = airAfter(plan).find(({ substance }) => substance === 'Ethanol');
		const step = plan.air?.steps[found?.index ?? -1];
		const endAt = plan.calendar.findLast(({ phase }) => phase === 'release')?.endAt ?? '';
		expect(found?.clearWaitS).toBe(step?.clearWaitS);
		expect(Date.parse(found?.untilAt ?? '')).toBeCloseTo(
			Date.parse(endAt) + 1000 * (step?.clearWaitS ?? 0),
			-1
		);
		expect(found?.meanwhile).toBe('Fit the frame');
	});

	test('is not named once it is gone before the next work begins', () => {
		const steps = (plan.air?.steps ?? []).map((step) => ({ ...step, clearWaitS: 1 }));
		const later = plan.calendar.map((entry) =>
			entry.kind === 'work' && entry.phase !== 'release'
				? { ...entry, startAt: new Date(Date.parse(entry.startAt) + 60_000).toISOString() }
				: entry
		);
		const air = plan.air && { ...plan.air, steps };
		expect(airAfter({ air, calendar: later })).toEqual([]);
	});

	test('of a plan of before, without a section for the air, is not known', () => {
		expect(airAfter({ ...plan, air: undefined })).toEqual([]);
	});
});
