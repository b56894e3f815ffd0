import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { Plan } from '../../src/lib/core/plan/plan';
import { displayRange } from '../../src/lib/core/quantity/display';
import { detailInputs, testInputs, testShop } from '../fixtures/materials';

const plan = makePlan(testInputs());
const ends = (of: Plan, path: string) => {
	const { low, high } = of.figures[path] ?? {};
	return { low, high };
};
const spread = (path: string): number => {
	const { low = 0, high = 0, value = 1 } = plan.figures[path] ?? {};
	return (high - low) / value;
};

describe('the same glove', () => {
	test('has the same range wherever it is named', () => {
		const glove = ends(plan, 'weights.gloveG');
		expect(glove.low).toBeLessThan(plan.weights.gloveG);
		for (const path of ['block.gloveRubberG', 'choice.estimates.0.rubberG']) {
			const found = ends(plan, path);
			expect(found.low, path).toBeCloseTo(glove.low ?? 0, 6);
			expect(found.high, path).toBeCloseTo(glove.high ?? 0, 6);
		}
	});

	test('carries the spread of its thickness into its price and into that of a layer', () => {
		const { totalPrice = 1, materialPrice = 0 } = plan.choice?.estimates[0] ?? {};
		// Two standard deviations of 10 % either way, on the material alone.
		expect(spread('choice.estimates.0.totalPrice')).toBeCloseTo(
			(0.4 * materialPrice) / totalPrice,
			6
		);
		expect(spread('block.gloveCost')).toBeCloseTo((0.4 * materialPrice) / totalPrice, 6);
		expect(spread('choice.estimates.2.rubberG')).toBeGreaterThan(0.4);
	});

	test('that would never cost the same as a block within its range says so', () => {
		const plans = Array.from({ length: 12 }, (_, i) =>
			makePlan(testInputs({ shop: { ...testShop, laborPerHour: 5 + 6 * i } }))
		);
		const figures = plans.flatMap(({ figures: { 'choice.evenScale': even } }) => even ?? []);
		for (const { low, high, value, note } of figures) {
			if (low === undefined) expect(note).toContain('No range is given');
			else expect([low <= value, (high ?? 0) >= value]).toEqual([true, true]);
		}
		expect(figures.length).toBeGreaterThan(0);
	});
});

describe('waste', () => {
	test('follows the weight of the glove that is trimmed, up to the waste behind each part', () => {
		const line = plan.waste?.lines.findIndex(({ materialId }) => {
			return materialId === plan.inputs.materials.build.id;
		});
		const { low = 0, high = 0, inputs } = plan.figures[`waste.lines.${line}.wasteG`] ?? {};
		// 5 % of a glove that is 20 % lighter or heavier.
		expect(high - low).toBeCloseTo(0.05 * 0.4 * plan.weights.gloveG, 6);
		expect(inputs?.map(({ figure }) => figure)).toContain('weights.gloveG');
		expect(ends(plan, 'waste.buildG').high).toBeGreaterThan(plan.waste?.buildG ?? Infinity);
	});
});

describe('plaster', () => {
	test('the part is what fills the mold, not what stays in the bucket', () => {
		const { plaster, pour, surface } = plan;
		// Mass balance: what is mixed is 5 % more than the part, set and dry or not.
		const mixedDryG = (plaster?.dryGPerMl ?? 0) * pour.volumeMl;
		expect((plaster?.dryG ?? 0) / surface.volumeMl).toBeCloseTo(plaster?.dryGPerMl ?? 0, 9);
		expect(mixedDryG / (plaster?.dryG ?? 1)).toBeCloseTo(pour.volumeMl / surface.volumeMl, 9);
		expect(pour.volumeMl).toBeGreaterThan(surface.volumeMl);
	});

	test('its growth is said to come from where it comes, in the trace and in the note', () => {
		const label = plan.figures['sizes.rows.0.partMm']?.inputs.at(2)?.label;
		const source = 'handbook value, from memory';
		if (plan.inputs.materials.casting.linearShrinkagePct === undefined) {
			expect(label).toContain(source);
			expect(plan.sizes?.note).toContain(source);
		}
		expect(plan.inputs.materials.casting.linearShrinkagePct).toBeUndefined();
	});
});

test('no range is shown whose ends read the same because they are the same', () => {
	for (const each of [plan, makePlan(detailInputs())]) {
		for (const [path, { low, high, unit }] of Object.entries(each.figures)) {
			if (low === undefined || high === undefined || unit !== 'count') continue;
			const shown = displayRange(low, high, unit, 'SI');
			expect(shown.low, path).not.toBe(shown.high);
		}
		for (const path of ['block.days', 'block.gloveDays', 'plaster.slurryGPerMl']) {
			expect(ends(each, path), path).toEqual({ low: undefined, high: undefined });
		}
	}
});
