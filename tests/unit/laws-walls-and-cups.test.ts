import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brushBackS } from '../../src/lib/core/laws/brush-back';
import { cupPace } from '../../src/lib/core/laws/cup-pace';
import { cupsG, largestCupG, layingRateGPerMin } from '../../src/lib/core/laws/cups';
import { drainedFilmMm, meanDrainedFilmMm, puddleDepthMm } from '../../src/lib/core/laws/drainage';
import { sagSpeedMmPerS } from '../../src/lib/core/laws/sag-flow';
import { largestHoldingMm, neededYieldStressPa, splitCoatsMm } from '../../src/lib/core/laws/sag';

const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('coats on a wall', () => {
	test('yield stress and thickness are inverse', () => {
		fc.assert(
			fc.property(
				real(1, 500),
				real(0.8, 2),
				real(10, 90),
				(yieldStressPa, densityGPerMl, slopeDeg) => {
					const thicknessMm = largestHoldingMm({ yieldStressPa, densityGPerMl, slopeDeg });
					fc.pre(thicknessMm <= 100);
					expect(neededYieldStressPa({ thicknessMm, densityGPerMl, slopeDeg })).toBeCloseTo(
						yieldStressPa,
						9
					);
				}
			)
		);
	});

	test('nothing runs at the limit and thicker runs faster', () => {
		const material = {
			yieldStressPa: 50,
			consistencyPaSn: 20,
			flowIndex: 0.6,
			densityGPerMl: 1.1,
			slopeDeg: 90
		};
		const limitMm = largestHoldingMm(material);
		expect(sagSpeedMmPerS({ ...material, thicknessMm: limitMm })).toBe(0);
		const speeds = [1.1, 1.5, 2].map((k) =>
			sagSpeedMmPerS({ ...material, thicknessMm: k * limitMm })
		);
		expect(speeds).toEqual([...speeds].sort((a, b) => a - b));
		expect(speeds[0]).toBeGreaterThan(0);
	});

	test('split coats keep the sum and none is over the limit', () => {
		fc.assert(
			fc.property(
				fc.array(real(0.5, 12), { minLength: 1, maxLength: 6 }),
				real(2, 8),
				(thicknessesMm, limitMm) => {
					const coats = splitCoatsMm({ thicknessesMm, limitMm });
					expect(sum(coats)).toBeCloseTo(sum(thicknessesMm), 9);
					expect(Math.max(...coats)).toBeLessThanOrEqual(limitMm * (1 + 1e-8));
				}
			)
		);
	});

	test('a draining film never exceeds what was laid and its mean is the mean of its places', () => {
		fc.assert(
			fc.property(
				real(0.1, 3),
				real(0.5, 50),
				real(0, 3600),
				real(10, 500),
				(initialMm, viscosityPaS, timeS, wallHeightMm) => {
					const film = { initialMm, viscosityPaS, timeS, densityGPerMl: 1.1 };
					const places = Array.from({ length: 4000 }, (_, i) =>
						drainedFilmMm({ ...film, belowTopMm: ((i + 0.5) / 4000) * wallHeightMm })
					);
					expect(Math.max(...places)).toBeLessThanOrEqual(initialMm);
					const mean = meanDrainedFilmMm({ ...film, wallHeightMm });
					expect(Math.abs(sum(places) / 4000 / mean - 1)).toBeLessThan(1e-3);
					const puddle = puddleDepthMm({ ...film, wallHeightMm, recessWidthMm: 5, walls: 2 });
					expect(puddle).toBeGreaterThanOrEqual(initialMm - 1e-12);
				}
			),
			{ numRuns: 40 }
		);
	});

	test('a coat is brushed back later the thicker it is, and never after the gel', () => {
		const coat = { viscosityPaS: 3, densityGPerMl: 1.1, gelTimeS: 1800 };
		const times = [0.1, 0.5, 1, 2, 10].map((thicknessMm) => brushBackS({ ...coat, thicknessMm }));
		expect(times).toEqual([...times].sort((a, b) => a - b));
		expect(times[4]).toBeLessThanOrEqual(1800);
		expect(brushBackS({ ...coat, viscosityPaS: 400, thicknessMm: 0.1 })).toBe(0);
	});

	test.each([0, 91, Number.NaN])('refuses a slope of %d degrees', (slopeDeg) => {
		expect(() => largestHoldingMm({ yieldStressPa: 50, densityGPerMl: 1, slopeDeg })).toThrow(
			RangeError
		);
	});
});

describe('cups', () => {
	test('equal cups sum to the batch and none is over the largest', () => {
		fc.assert(
			fc.property(real(1, 20_000), real(100, 1000), (totalG, largestG) => {
				const cups = cupsG({ totalG, largestG });
				expect(sum(cups)).toBeCloseTo(totalG, 6);
				expect(Math.max(...cups)).toBeLessThanOrEqual(largestG * (1 + 1e-8));
			})
		);
		expect(cupsG({ totalG: 0, largestG: 100 })).toEqual([]);
	});

	test('a cup of the largest size is empty when its working time ends', () => {
		fc.assert(
			fc.property(real(60, 3600), real(1, 59), real(5, 500), (workingTimeS, mixingTimeS, rate) => {
				const largestG = largestCupG({ workingTimeS, mixingTimeS, layingRateGPerMin: rate });
				if (largestG === null) throw new Error('expected a cup');
				const pace = {
					people: 1,
					hasMixer: false,
					mixingTimeS,
					workingTimeS,
					layingRateGPerMin: rate
				};
				const held = cupPace({ ...pace, cupsG: [largestG], bondWindowS: 60 });
				expect(held.totalS).toBeCloseTo(workingTimeS, 6);
				expect(held.warnings).toEqual([]);
				expect(
					cupPace({ ...pace, cupsG: [largestG * 1.1], bondWindowS: 60 }).warnings
				).toHaveLength(1);
			})
		);
		expect(largestCupG({ workingTimeS: 100, mixingTimeS: 100, layingRateGPerMin: 60 })).toBeNull();
		expect(layingRateGPerMin({ cm2PerMin: 100, thicknessMm: 5, densityGPerMl: 1.2 })).toBeCloseTo(
			60,
			9
		);
	});

	test('alone, mixing is the gap; with a mixer there is none', () => {
		const pace = {
			cupsG: [300, 300, 300],
			people: 1,
			mixingTimeS: 120,
			workingTimeS: 540,
			layingRateGPerMin: 60,
			bondWindowS: 100
		};
		const alone = cupPace({ ...pace, hasMixer: false });
		expect(alone.gapS).toBe(120);
		expect(alone.totalS).toBe(3 * (120 + 300));
		expect(alone.warnings[0]).toMatch(/2 min pass between two cups; a fresh one bonds for 1.7 min/);
		const helped = cupPace({ ...pace, hasMixer: true });
		expect(helped.gapS).toBe(0);
		expect(helped.totalS).toBe(120 + 3 * 300);
		expect(helped.turns.map((turn) => turn.mixFromS)).toEqual([0, 300, 600]);
		expect(helped.warnings).toEqual([]);
	});

	test('two people without a mixer work side by side', () => {
		const pace = cupPace({
			cupsG: [300, 300, 300, 300],
			people: 2,
			hasMixer: false,
			mixingTimeS: 60,
			workingTimeS: 540,
			layingRateGPerMin: 60,
			bondWindowS: 600
		});
		expect(pace.turns.map(({ person }) => person)).toEqual([0, 1, 0, 1]);
		expect(pace.totalS).toBe(2 * 360);
	});
});
