import { describe, expect, test } from 'vitest';
import { buildCoatSeries } from '../../src/lib/core/plan/coat-series';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { PlanError } from '../../src/lib/core/plan/plan-error';
import { testInputs } from '../fixtures/materials';

describe('the build coats of a glove', () => {
	test('are all there, and sum to its thickness, for every thickness and number that is accepted', () => {
		for (let tenths = 5; tenths <= 300; tenths += 1) {
			const totalMm = tenths / 10;
			for (let coats = 2; coats <= Math.min(12, totalMm / 0.2 + 1e-9); coats += 1) {
				const { coatsMm } = buildCoatSeries(totalMm, Infinity, coats);
				expect(coatsMm).toHaveLength(coats);
				for (const mm of coatsMm) expect(mm, `${coats} of ${totalMm}`).toBeGreaterThan(0);
				const sumMm = coatsMm.reduce((sum, mm) => sum + mm, 0);
				expect(sumMm, `${coats} of ${totalMm}`).toBeCloseTo(totalMm, 9);
			}
		}
	});

	test('more than a brush can lay is refused at its field, with what is accepted', () => {
		const asked = () => makePlan(testInputs({ gloveThicknessMm: 1, buildCoats: 11 }));
		expect(asked).toThrow(PlanError);
		try {
			asked();
		} catch (error) {
			const [problem] = (error as PlanError).problems;
			expect(problem?.path).toBe('buildCoats');
			expect(problem?.message).toContain('0.09 mm each');
			expect(problem?.message).toContain('accepted: at most 5');
		}
		expect(() => makePlan(testInputs({ gloveThicknessMm: 1, buildCoats: 5 }))).not.toThrow();
	});
});
