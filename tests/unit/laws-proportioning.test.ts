import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addingOrder } from '../../src/lib/core/laws/adding-order';
import { correction, cupFill } from '../../src/lib/core/laws/correction';
import { additionG, otherPartG, splitBatchG } from '../../src/lib/core/laws/proportioning';
import { ratioContradiction } from '../../src/lib/core/laws/ratio-contradiction';
import { readableSplit } from '../../src/lib/core/laws/readable-split';
import { massPartsBPer100A, volumePartsBPer100A } from '../../src/lib/core/laws/volume-ratio';
import { ratioDeviationFraction } from '../../src/lib/core/laws/weighing-check';
import {
	ratioUncertaintyFraction,
	smallestBatchG
} from '../../src/lib/core/laws/weighing-uncertainty';

const mass = fc.double({ min: 1, max: 4000, noNaN: true });
const part = fc.double({ min: 1, max: 100, noNaN: true });
const parts = fc.array(part, { minLength: 2, maxLength: 4 });
const density = fc.double({ min: 0.5, max: 3, noNaN: true });
const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

describe('splitting a batch', () => {
	test('the parts sum to the batch', () => {
		fc.assert(
			fc.property(mass, parts, (batchG, ratio) => {
				expect(sum(splitBatchG({ batchG, parts: ratio }))).toBeCloseTo(batchG, 6);
			})
		);
	});

	test('only the ratio counts, not how it is written', () => {
		fc.assert(
			fc.property(
				mass,
				parts,
				fc.double({ min: 0.1, max: 10, noNaN: true }),
				(batchG, ratio, k) => {
					const scaled = splitBatchG({ batchG, parts: ratio.map((each) => each * k) });
					splitBatchG({ batchG, parts: ratio }).forEach((each, i) => {
						expect(scaled[i]).toBeCloseTo(each, 6);
					});
				}
			)
		);
	});

	test('from A to B and back is A', () => {
		fc.assert(
			fc.property(mass, part, part, (knownG, a, b) => {
				const otherG = otherPartG({ knownG, knownParts: a, otherParts: b });
				expect(otherPartG({ knownG: otherG, knownParts: b, otherParts: a })).toBeCloseTo(knownG, 6);
			})
		);
	});

	test('an addition is per hundred of the base', () => {
		expect(additionG({ baseG: 360, partsPerHundred: 2.5 })).toBeCloseTo(9, 9);
	});

	test.each([
		[{ batchG: -1, parts: [1, 1] }, /batchG is -1; accepted: 0 to 1000000/],
		[{ batchG: 1e308, parts: [1, 1] }, /batchG/],
		[{ batchG: Number.NaN, parts: [1, 1] }, /batchG is NaN/],
		[{ batchG: 100, parts: [1] }, /number of parts is 1/],
		[{ batchG: 100, parts: [1, 0] }, /parts\[1\] is 0/]
	])('refuses %j', (given, message) => {
		expect(() => splitBatchG(given)).toThrow(message);
	});
});

describe('ratios by weight and by volume', () => {
	test('from weight to volume and back', () => {
		fc.assert(
			fc.property(part, part, density, density, (a, b, densityA, densityB) => {
				const densitiesGPerMl = [densityA, densityB] as const;
				const volumeB = volumePartsBPer100A({ massParts: [a, b], densitiesGPerMl });
				const massB = massPartsBPer100A({ volumeParts: [100, volumeB], densitiesGPerMl });
				expect(massB / 100).toBeCloseTo(b / a, 9);
			})
		);
	});

	test('a sheet that agrees with itself has no contradiction', () => {
		fc.assert(
			fc.property(part, part, density, density, (a, b, densityA, densityB) => {
				const sheet = {
					massParts: [a, b],
					volumeParts: [a / densityA, b / densityB],
					densitiesGPerMl: [densityA, densityB]
				} as const;
				expect(ratioContradiction(sheet)).toBeNull();
			})
		);
	});

	test('each number that is called off would mend the sheet', () => {
		const sheet = {
			massParts: [80, 100],
			volumeParts: [1, 1],
			densitiesGPerMl: [1.05, 1.1]
		} as const;
		const found = ratioContradiction(sheet);
		expect(found?.deviationFraction).toBeCloseTo(0.8 / (1.05 / 1.1) - 1, 9);
		const needed = found?.needed;
		if (!needed) throw new Error('expected a contradiction');
		const mended = [
			{ ...sheet, massParts: [100, needed.massPartsBPer100A] },
			{ ...sheet, volumeParts: [100, needed.volumePartsBPer100A] },
			{ ...sheet, densitiesGPerMl: [needed.densityAGPerMl, 1.1] },
			{ ...sheet, densitiesGPerMl: [1.05, needed.densityBGPerMl] }
		] as (typeof sheet)[];
		for (const each of mended) {
			expect(ratioContradiction({ ...each, toleranceFraction: 1e-9 })).toBeNull();
		}
	});

	test('the mixed density tells which ratio is off', () => {
		// 100:50 by weight at 1.0 and 2.0 g/mL is 4:1 by volume and mixes to 1.2 g/mL.
		const densities = { densitiesGPerMl: [1, 2], mixedGPerMl: 1.2 } as const;
		const wrongVolume = { ...densities, massParts: [100, 50], volumeParts: [2, 1] } as const;
		const wrongWeight = { ...densities, massParts: [100, 80], volumeParts: [4, 1] } as const;
		const wrongDensity = { ...wrongVolume, mixedGPerMl: 2.5 } as const;
		expect(ratioContradiction(wrongVolume)?.off).toBe('volume ratio');
		expect(ratioContradiction(wrongWeight)?.off).toBe('weight ratio');
		expect(ratioContradiction(wrongDensity)?.off).toBe('density');
	});
});

describe('a cup that was over-poured', () => {
	test('is on ratio after the correction, and nothing was taken out', () => {
		fc.assert(
			fc.property(fc.array(fc.tuple(mass, part), { minLength: 2, maxLength: 4 }), (cup) => {
				const actualG = cup.map(([massG]) => massG);
				const ratio = cup.map(([, each]) => each);
				const { addG, batchG } = correction({ actualG, parts: ratio });
				const after = actualG.map((each, i) => each + (addG[i] ?? Number.NaN));
				expect(Math.min(...addG)).toBe(0);
				expect(ratioDeviationFraction({ actualG: after, parts: ratio })).toBeLessThan(1e-9);
				expect(sum(after) / batchG).toBeCloseTo(1, 9);
			})
		);
	});

	test('may no longer fit its cup', () => {
		const cup = { densitiesGPerMl: [1.05, 1.1], cupVolumeMl: 500 };
		expect(cupFill({ ...cup, massesG: [160, 180] }).holds).toBe(true);
		const { addG } = correction({ actualG: [160, 240], parts: [80, 100] });
		const after = cupFill({ ...cup, massesG: [160 + (addG[0] ?? 0), 240] });
		expect(after.holds).toBe(false);
		expect(after.volumeMl).toBeCloseTo(192 / 1.05 + 240 / 1.1, 9);
	});

	test('deviation names the error of the ratio, whichever part it is', () => {
		expect(ratioDeviationFraction({ actualG: [160, 204], parts: [80, 100] })).toBeCloseTo(0.02, 9);
		expect(ratioDeviationFraction({ actualG: [163.2, 200], parts: [80, 100] })).toBeCloseTo(
			0.02,
			9
		);
		expect(() => ratioDeviationFraction({ actualG: [0, 1], parts: [1, 1] })).toThrow(RangeError);
	});
});

describe('what a scale can weigh', () => {
	test('the smallest batch stays within the tolerance and a tenth less does not', () => {
		fc.assert(
			fc.property(
				part,
				part,
				fc.constantFrom(0.1, 1, 2),
				fc.double({ min: 0.005, max: 0.05, noNaN: true }),
				(a, b, readabilityG, toleranceFraction) => {
					const batchG = smallestBatchG({ readabilityG, parts: [a, b], toleranceFraction });
					const expanded = (M: number) => {
						const [first = 0, second = 0] = splitBatchG({ batchG: M, parts: [a, b] });
						return (
							2 * ratioUncertaintyFraction({ massesG: [first, second], readabilityG, tared: true })
						);
					};
					expect(expanded(batchG)).toBeLessThanOrEqual(toleranceFraction * (1 + 1e-9));
					expect(expanded((batchG - readabilityG) * 0.9)).toBeGreaterThan(toleranceFraction);
				}
			)
		);
	});

	test('a rounded split suffices, reads on the scale and keeps the ratio', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 50, max: 5000, noNaN: true }),
				part,
				part,
				fc.constantFrom(0.1, 1, 5),
				(batchG, a, b, readabilityG) => {
					const split = readableSplit({
						batchG,
						parts: [a, b],
						readabilityG,
						toleranceFraction: 0.02
					});
					if (!split) throw new Error('expected a split');
					expect(split.batchG).toBeGreaterThanOrEqual(batchG - 1e-3);
					expect(split.deviationFraction).toBeLessThanOrEqual(0.02 + 1e-9);
					for (const massG of split.massesG) {
						const steps = massG / readabilityG;
						expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
					}
				}
			)
		);
	});

	test('a scale too coarse for the ratio is refused as a value', () => {
		const given = { batchG: 10, parts: [100, 33.333], readabilityG: 1000, toleranceFraction: 0 };
		expect(readableSplit(given)).toBeNull();
	});

	test('thicker parts are weighed first, equals in their order', () => {
		const order = addingOrder([
			{ name: 'A', viscosityPaS: 0.2 },
			{ name: 'B', viscosityPaS: 5 },
			{ name: 'C', viscosityPaS: 0.2 }
		]);
		expect(order.map(({ name }) => name)).toEqual(['B', 'A', 'C']);
	});
});
