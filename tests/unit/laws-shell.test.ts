import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beamBending } from '../../src/lib/core/laws/beam';
import { headPressurePa } from '../../src/lib/core/laws/head';
import { plasterMix } from '../../src/lib/core/laws/plaster';
import { plateBending, plateCoefficients, type Plate } from '../../src/lib/core/laws/plate';
import {
	PLATE_TABLES,
	type PlateLoad,
	type PlateSupport
} from '../../src/lib/core/laws/plate-coefficients';
import { shellThickness } from '../../src/lib/core/laws/shell-thickness';
import { partSizeMm, patternSizeMm } from '../../src/lib/core/laws/shrinkage';
import { strapForceN } from '../../src/lib/core/laws/strap';
import { coreUplift } from '../../src/lib/core/laws/uplift';
import { mixWaste, WASTE_CAUTION } from '../../src/lib/core/laws/waste';

const support = fc.constantFrom<PlateSupport>('simple', 'clamped');
const load = fc.constantFrom<PlateLoad>(
	'uniform',
	'rising along the short side',
	'rising along the long side'
);
const plate: fc.Arbitrary<Plate> = fc
	.record({
		support,
		load,
		pressurePa: fc.double({ min: 100, max: 20_000, noNaN: true }),
		shortMm: fc.double({ min: 100, max: 600, noNaN: true }),
		longMm: fc.double({ min: 600, max: 1200, noNaN: true })
	})
	.filter(({ shortMm, longMm }) => longMm <= 5 * shortMm);
const wall: Plate = {
	support: 'clamped',
	load: 'uniform',
	pressurePa: 5000,
	shortMm: 300,
	longMm: 500
};

describe('plates', () => {
	test('the rows of every table run from the square to longer shapes', () => {
		for (const tables of Object.values(PLATE_TABLES)) {
			for (const rows of Object.values(tables)) {
				expect(rows[0]?.x).toBe(1);
				rows.slice(1).forEach((row, i) => expect(row.x).toBeLessThan(rows[i]?.x ?? 0));
			}
		}
	});

	test('the endless strip is reached, and beyond a table of rising load is refused', () => {
		const strip = { support: 'simple', shortMm: 10, longMm: 1e6 } as const;
		expect(plateCoefficients({ ...strip, load: 'uniform' }).alpha).toBeCloseTo(5 / 384, 5);
		expect(() => plateCoefficients({ ...strip, load: 'rising along the long side' })).toThrow(
			'accepted: 1 to 5 for a load rising along the long side'
		);
		expect(() => plateCoefficients({ ...wall, shortMm: 600 })).toThrow(/longMm is 500/);
	});

	test('a uniform load bends more than a rising one, simple edges more than clamped', () => {
		fc.assert(
			fc.property(plate, (each) => {
				const here = plateCoefficients(each);
				const uniform = plateCoefficients({ ...each, load: 'uniform' });
				const simple = plateCoefficients({ ...each, support: 'simple' });
				expect(here.alpha).toBeLessThanOrEqual(uniform.alpha);
				expect(here.alpha).toBeLessThanOrEqual(simple.alpha);
			})
		);
	});

	test('only the shape counts, not the size: w / a stays when a and t scale together', () => {
		fc.assert(
			fc.property(plate, fc.double({ min: 0.5, max: 2, noNaN: true }), (each, k) => {
				const small = plateBending({ ...each, thicknessMm: 10, modulusPa: 3e9 });
				const large = plateBending({
					...each,
					shortMm: each.shortMm * k,
					longMm: each.longMm * k,
					thicknessMm: 10 * k,
					modulusPa: 3e9
				});
				expect(large.deflectionMm / k).toBeCloseTo(small.deflectionMm, 6);
				expect(large.stressPa / small.stressPa).toBeCloseTo(1, 6);
			})
		);
	});

	test('the thickness found bends by just what is allowed', () => {
		fc.assert(
			fc.property(plate, fc.double({ min: 0.1, max: 2, noNaN: true }), (each, allowed) => {
				const found = shellThickness({
					...each,
					modulusPa: 3e9,
					allowedDeflectionMm: allowed
				});
				const { deflectionMm } = plateBending({
					...each,
					thicknessMm: found.thicknessMm,
					modulusPa: 3e9
				});
				expect(found.governedBy).toBe('deflection');
				expect(deflectionMm / allowed).toBeCloseTo(1, 9);
			})
		);
	});

	test('a weak material is governed by stress', () => {
		const found = shellThickness({
			...wall,
			modulusPa: 3e10,
			allowedDeflectionMm: 5,
			allowedStressPa: 2e5
		});
		expect(found.governedBy).toBe('stress');
		const bent = plateBending({ ...wall, thicknessMm: found.thicknessMm, modulusPa: 3e10 });
		expect(bent.stressPa).toBeCloseTo(2e5, 3);
	});

	test('limits of the theory are said, not hidden', () => {
		const thin = plateBending({ ...wall, thicknessMm: 2, modulusPa: 1e9 });
		expect(thin.warnings.join()).toContain('half the thickness');
		const thick = plateBending({ ...wall, thicknessMm: 60, modulusPa: 1e9 });
		expect(thick.warnings.join()).toContain('tenth of its span');
		expect(plateBending({ ...wall, thicknessMm: 15, modulusPa: 5e9 }).warnings).toEqual([]);
	});
});

describe('beams, straps and cores', () => {
	test('ends held fast sag less than free ends, a cantilever more', () => {
		const board = {
			load: 'uniform',
			peakNPerMm: 0.5,
			spanMm: 600,
			widthMm: 200,
			depthMm: 18,
			modulusPa: 8e9
		} as const;
		const sag = (each: 'fixed' | 'simple' | 'cantilever') =>
			beamBending({ ...board, support: each }).deflectionMm;
		expect(sag('simple') / sag('fixed')).toBeCloseTo(5, 9);
		expect(sag('cantilever')).toBeGreaterThan(sag('simple'));
	});

	test('a lid that is heavy enough needs no strap; leaning legs pull harder', () => {
		expect(strapForceN({ upliftN: 100, lidMassG: 20_000, straps: 2 })).toBe(0);
		const plumb = strapForceN({ upliftN: 900, lidMassG: 0, straps: 2 });
		const leaning = strapForceN({ upliftN: 900, lidMassG: 0, straps: 2, legAngleDeg: 60 });
		expect(leaning).toBeCloseTo(2 * plumb, 9);
		expect(() => strapForceN({ upliftN: 900, lidMassG: 0, straps: 1.5 })).toThrow(/whole number/);
	});

	test('a core heavier than the liquid stays down', () => {
		expect(coreUplift({ volumeMl: 1000, massG: 2000, liquidGPerMl: 1.6 })).toEqual({
			netUpliftN: 0,
			floats: false,
			immersedFraction: 1
		});
	});

	test('pressure grows with head and with density, in proportion', () => {
		const value = fc.double({ min: 0.1, max: 5, noNaN: true });
		fc.assert(
			fc.property(value, fc.double({ min: 1, max: 1000, noNaN: true }), (density, headMm) => {
				const one = headPressurePa({ densityGPerMl: density, headMm });
				expect(headPressurePa({ densityGPerMl: 2 * density, headMm }) / one).toBeCloseTo(2, 9);
				expect(headPressurePa({ densityGPerMl: density, headMm: 2 * headMm }) / one).toBeCloseTo(
					2,
					9
				);
			})
		);
	});
});

describe('shrinkage, plaster and waste', () => {
	const stage = fc
		.tuple(
			fc.double({ min: -0.04, max: 0.2, noNaN: true }),
			fc.double({ min: 0, max: 0.02, noNaN: true }),
			fc.double({ min: 0, max: 0.02, noNaN: true })
		)
		.map(([low, a, b]) => ({ low, likely: low + a, high: low + a + b }));

	test('a pattern made to the law gives the wanted part, inside its range', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 2000, noNaN: true }),
				fc.array(stage, { maxLength: 3 }),
				(partMm, stages) => {
					const patternMm = patternSizeMm({ partMm, stages });
					const part = partSizeMm({ patternMm, stages });
					expect(part.likelyMm).toBeCloseTo(partMm, 6);
					expect(part.lowMm).toBeLessThanOrEqual(part.likelyMm + 1e-9);
					expect(part.highMm).toBeGreaterThanOrEqual(part.likelyMm - 1e-9);
				}
			)
		);
	});

	test('a likely shrinkage outside its own range is refused', () => {
		expect(() =>
			partSizeMm({ patternMm: 100, stages: [{ low: 0.01, likely: 0.03, high: 0.02 }] })
		).toThrow(/likely shrinkage is 0.03/);
	});

	test('water and plaster fill the volume asked for, and the set plaster keeps its mass', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 10, max: 1e5, noNaN: true }),
				fc.double({ min: 0.25, max: 1.5, noNaN: true }),
				(volumeMl, waterRatio) => {
					const mix = plasterMix({ volumeMl, waterRatio });
					expect((mix.plasterG / 2.63 + mix.waterG) / volumeMl).toBeCloseTo(1, 9);
					expect(mix.plasterG + mix.waterG).toBeCloseTo(mix.dryG + mix.dryingWaterG, 6);
					expect(mix.dryingWaterG).toBeGreaterThan(0);
				}
			)
		);
	});

	test('waste can’t be more than was mixed, and comes with its caution', () => {
		const cups = { cupResidueG: 10, brushesCount: 2, brushResidueG: 15 };
		expect(mixWaste({ mixedG: 1000, cupsCount: 7, ...cups })).toEqual({
			wasteG: 100,
			wasteFraction: 0.1,
			caution: WASTE_CAUTION
		});
		expect(() => mixWaste({ mixedG: 50, cupsCount: 7, ...cups })).toThrow(/wasteG is 100/);
	});
});
