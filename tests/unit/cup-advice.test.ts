import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cupAdvice, type CupAtScale } from '../../src/lib/core/process/cup-advice';
import { scaleText } from '../../src/lib/core/process/scale-text';
import { isOnRatio } from '../../src/lib/core/process/cup-check';
import { runningTotalG } from '../../src/lib/core/process/cup-slips';

/** 80 parts of A to 100 of B by weight, B poured first; a scale that shows tenths. */
const cup: CupAtScale = {
	number: 1,
	of: 1,
	resplit: false,
	materialName: 'Test urethane',
	cupVolumeMl: 1000,
	largestCupMl: 2500,
	parts: [
		{ part: 'B', targetG: 200, densityGPerMl: 1 },
		{ part: 'A', targetG: 160, densityGPerMl: 1.1 }
	],
	fractions: [
		{ part: 'A', fraction: 80 / 180 },
		{ part: 'B', fraction: 100 / 180 }
	],
	toleranceFraction: 0.02,
	readabilityG: 0.1,
	weighedG: null,
	lots: {}
};

describe('advice on the cup at the scale', () => {
	test('200 g of B alone asks for 160 g of A (80:100 by weight, arithmetic)', () => {
		expect(cupAdvice(cup, { B: 200 })).toMatchObject({
			state: 'partial',
			add: [{ part: 'A', addG: 160, totalG: 160 }]
		});
	});

	test('208 g of B with 160 g of A lacks exactly 6.4 g of A', () => {
		const advice = cupAdvice(cup, { A: 160, B: 208 });
		expect(advice).toMatchObject({
			state: 'off ratio',
			add: [{ part: 'A', addG: 6.4, totalG: 166.4 }],
			reachable: true,
			holds: true
		});
		expect(advice.deviationFraction).toBeCloseTo(0.04, 9);
	});

	test('a slip of the decimal point is asked about, and a cup that would double is not corrected', () => {
		expect(cupAdvice(cup, { A: 1600, B: 200 })).toMatchObject({
			slip: { part: 'A', massG: 160, isTenth: true },
			doubles: true
		});
		// The other part shows just what was to be poured.
		expect(cupAdvice(cup, { A: 160, B: 2000 }).slip).toEqual({
			part: 'B',
			massG: 200,
			isTenth: true
		});
		expect(cupAdvice(cup, { A: 160, B: 20 }).slip).toEqual({
			part: 'B',
			massG: 200,
			isTenth: false
		});
		expect(cupAdvice(cup, { A: 600, B: 200 })).toMatchObject({ slip: null, doubles: true });
		expect(cupAdvice(cup, { A: 160, B: 208 })).toMatchObject({ slip: null, doubles: false });
	});

	test('a scale that is too coarse to correct a small cup is named, not trusted', () => {
		const coarse = { ...cup, readabilityG: 5 };
		expect(cupAdvice(coarse, { A: 8, B: 12 }).reachable).toBe(false);
	});

	test('a correction that no longer leaves room to stir is said', () => {
		expect(cupAdvice({ ...cup, cupVolumeMl: 500 }, { A: 160, B: 260 }).holds).toBe(false);
	});

	test('without densities nothing is claimed about the room in the cup', () => {
		const parts = cup.parts.map((part) => ({ ...part, densityGPerMl: null }));
		expect(cupAdvice({ ...cup, parts }, { A: 160, B: 200 }).holds).toBeNull();
	});

	test('whatever was poured, following reachable advice puts the cup on ratio', () => {
		const mass = fc.integer({ min: 1, max: 20_000 }).map((tenths) => tenths / 10);
		fc.assert(
			fc.property(mass, mass, (A, B) => {
				const advice = cupAdvice(cup, { A, B });
				if (advice.state === 'on ratio') return;
				const then: Record<string, number> = { A, B };
				for (const { part, totalG } of advice.add) then[part] = totalG;
				expect(isOnRatio(cup, then)).toBe(advice.reachable);
				expect(then.A).toBeGreaterThanOrEqual(A);
				expect(then.B).toBeGreaterThanOrEqual(B);
			})
		);
	});
});

test('a mass is written with as many digits as the scale shows', () => {
	expect(scaleText(166.42, 0.1)).toBe('166.4');
	expect(scaleText(166.42, 1)).toBe('166');
	expect(scaleText(167, 5)).toBe('165');
	expect(scaleText(0.25, 0.01)).toBe('0.25');
});

describe('a scale that was not zeroed between the parts', () => {
	test('200 g of B and 360 g in all read as 160 g of A by itself (80:100, arithmetic)', () => {
		expect(cupAdvice(cup, { B: 200, A: 360 }).alone).toEqual({ B: 200, A: 160 });
	});

	test('what is on ratio as it is, or off ratio either way, is not asked about', () => {
		expect(cupAdvice(cup, { B: 200, A: 160 }).alone).toBeNull();
		expect(cupAdvice(cup, { B: 200, A: 300 }).alone).toBeNull();
		expect(cupAdvice(cup, { B: 200, A: 190 }).alone).toBeNull();
	});

	test('three parts may all have been read as one running total', () => {
		const parts = ['B', 'A', 'C'].map((part) => ({ part, targetG: 100, densityGPerMl: 1 }));
		const fractions = parts.map(({ part }) => ({ part, fraction: 1 / 3 }));
		const three = { ...cup, parts, fractions };
		expect(cupAdvice(three, { B: 100, A: 200, C: 300 }).alone).toEqual({ B: 100, A: 100, C: 100 });
	});

	test('with the second part in, an unzeroed scale shows both; what was weighed counts, not its target', () => {
		expect(runningTotalG(cup, {}, { part: 'A', massG: 160 })).toBe(360);
		expect(runningTotalG(cup, { B: 200.4 }, { part: 'A', massG: 160.3 })).toBe(360.7);
		expect(runningTotalG(cup, {}, { part: 'B', massG: 200 })).toBe(200);
	});
});
