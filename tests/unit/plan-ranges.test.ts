import { describe, expect, test } from 'vitest';
import { dewPointC } from '../../src/lib/core/laws/dew-point';
import { peakMoment, type CuringMaterial } from '../../src/lib/core/laws/mass-effect';
import { heatRanges } from '../../src/lib/core/plan/heat-ranges';
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
		// Two standard deviations of 10 % either way on the material, a fifth either way on the hours.
		const expected = (0.4 * materialPrice + 0.4 * (totalPrice - materialPrice)) / totalPrice;
		expect(spread('choice.estimates.0.totalPrice')).toBeCloseTo(expected, 6);
		expect(spread('block.gloveCost')).toBeCloseTo(expected, 6);
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

describe('hours, forces and air', () => {
	test('of every way to build are as uncertain as those of the plan; days say why they have none', () => {
		for (const i of [0, 1, 2]) {
			const { low = 0, high = 0, value = 0 } = plan.figures[`choice.estimates.${i}.laborS`] ?? {};
			expect(low).toBeLessThanOrEqual(0.8 * value * (1 + 1e-9));
			expect(high).toBeGreaterThanOrEqual(1.2 * value * (1 - 1e-9));
			expect(plan.figures[`choice.estimates.${i}.daysCount`]?.note).toContain('one more');
		}
	});

	test('let a wall that was laid a fifth thinner bulge nearly twice as far', () => {
		const sheet = { ...testInputs().materials.shell, modulusMPa: 900 };
		const inputs = testInputs();
		const stiff = makePlan({ ...inputs, materials: { ...inputs.materials, shell: sheet } });
		const { high = 0, value = 1 } = stiff.figures['forces.shellWall.deflectionMm'] ?? {};
		expect(high / value).toBeCloseTo(0.8 ** -3, 6);
	});

	test('carry what boards weigh and how far they bend, and name kits as bought', () => {
		for (const path of ['weights.frameG', 'forces.frameBoard.deflectionMm']) {
			const { low = 0, high = 0, value = 0 } = plan.figures[path] ?? {};
			expect(low, path).toBeLessThan(value);
			expect(high, path).toBeGreaterThan(value);
		}
		expect(plan.figures['order.0.price']?.note).toContain('Whole kits');
	});

	test('hold the dew point within what a thermometer and a hygrometer leave open', () => {
		const { temperatureC, humidityPct } = { temperatureC: 23, humidityPct: 45 };
		const damp = makePlan(
			testInputs({ roomTemperatureC: temperatureC, roomHumidityPct: humidityPct })
		);
		const found = ends(damp, 'room.dewPointC');
		expect(found.low).toBeCloseTo(dewPointC({ temperatureC: 22, humidityPct: 42 }), 9);
		expect(found.high).toBeCloseTo(dewPointC({ temperatureC: 24, humidityPct: 48 }), 9);
		expect(ends(damp, 'room.lowestSurfaceC').high).toBeCloseTo((found.high ?? 0) + 3, 9);
		// The surface is read by the same kind of thermometer.
		expect(ends(damp, 'room.surfaceMarginK').low).toBeCloseTo(22 - (found.high ?? 0), 9);
		// Saturated air holds no more, whatever the hygrometer may be off.
		const full = makePlan(testInputs({ roomTemperatureC: temperatureC, roomHumidityPct: 100 }));
		expect(ends(full, 'room.dewPointC').high).toBeCloseTo(24, 6);
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

describe('cures, and what they cost in time', () => {
	const uncertain = {
		heatJPerG: { low: 90, high: 210 },
		specificHeatJPerGK: { low: 1.4, high: 2.1 },
		roomC: { low: 20, high: 26 },
		thicknessMm: { low: 4, high: 8 }
	};
	const material: CuringMaterial = {
		densityGPerMl: 1.2,
		heatJPerG: 150,
		specificHeatJPerGK: 1.7,
		rate: { kind: 'q10', factor: 2 },
		potLife: { timeS: 540, massG: 150, temperatureC: 23 }
	};
	const corner = (i: number, range: { low: number; high: number }, bit: number): number =>
		i & bit ? range.high : range.low;

	test('the coldest and the hottest end of a peak are the least and greatest of all combinations', () => {
		const found = heatRanges(material, {
			massG: 400,
			calmPeakC: 80,
			...uncertain
		});
		const peaks = Array.from({ length: 16 }, (_, i) => {
			const of = {
				...material,
				heatJPerG: corner(i, uncertain.heatJPerG, 1),
				specificHeatJPerGK: corner(i, uncertain.specificHeatJPerGK, 2)
			};
			const roomC = corner(i, uncertain.roomC, 4);
			const thicknessMm = corner(i, uncertain.thicknessMm, 8);
			return {
				cup: peakMoment(of, { kind: 'cup', massG: 400 }, roomC).temperatureC,
				film: peakMoment(of, { kind: 'film', thicknessMm }, roomC).temperatureC
			};
		});
		for (const [range, key] of [
			[found.cupPeakC, 'cup'],
			[found.filmPeakC, 'film']
		] as const) {
			if ('limit' in range) throw new Error(range.limit);
			const all = peaks.map((peak) => peak[key]);
			expect(Math.min(...all), key).toBeCloseTo(range.low, 6);
			expect(Math.max(...all), key).toBeCloseTo(range.high, 6);
		}
	});

	test('peaks, waits, hands, costs and life all carry a range that holds the number', () => {
		for (const each of [plan, makePlan(detailInputs({ roomTemperatureC: 18 }))]) {
			for (const path of [
				'cure.materials.0.cup.peakC',
				'cure.materials.0.cup.workableS',
				'cure.materials.0.film.peakC',
				'coats.0.tackTestS',
				'coats.0.windowClosesS',
				'coats.0.workingS',
				'gloveCure.testS',
				'shellCure.testS',
				'cost.laborS',
				'cost.labor',
				'cost.total',
				'cost.perPart',
				'life.totalPricePerPart'
			]) {
				const { low = NaN, high = NaN, value = NaN } = each.figures[path] ?? {};
				expect(low, path).toBeLessThanOrEqual(value);
				expect(high, path).toBeGreaterThanOrEqual(value);
				expect(low, path).toBeLessThan(high);
			}
		}
	});

	test('a total moves by the hands on it alone: the kits have their price', () => {
		const { low = 0, high = 0 } = plan.figures['cost.total'] ?? {};
		expect(high - low).toBeCloseTo(0.4 * plan.cost.labor, 6);
		expect(ends(plan, 'cost.materials')).toEqual({ low: undefined, high: undefined });
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
