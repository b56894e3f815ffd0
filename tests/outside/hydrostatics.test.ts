import { headPressurePa, wallForce } from '../../src/lib/core/laws/head';
import { strapForceN } from '../../src/lib/core/laws/strap';
import { boardUpliftN, coreUplift } from '../../src/lib/core/laws/uplift';
import { outsideCase } from './outside-case';

const SP811 = 'NIST SP 811 (2008), appendix B, conventional columns';
const BY_HAND = 'hydrostatics, worked by hand with g = 9.81 m/s²';
// g = 9.80665 here against 9.81 there.
const G_ROUNDED = { fraction: 0.0004 };

const COLUMNS: [what: string, densityGPerMl: number, headMm: number, expected: number][] = [
	['1 mm of water', 1, 1, 9.80665],
	['1 inch of water', 1, 25.4, 249.0889],
	['1 foot of water', 1, 304.8, 2989.067],
	['1 mm of mercury', 13.5951, 1, 133.3224],
	['1 inch of mercury', 13.5951, 25.4, 3386.389]
];
for (const [what, densityGPerMl, headMm, expected] of COLUMNS) {
	outsideCase({
		what: `pressure of ${what}`,
		source: SP811,
		unit: 'Pa',
		expected,
		got: () => headPressurePa({ densityGPerMl, headMm }),
		tolerance: { fraction: 1e-6 }
	});
}

const HEADS: [densityGPerMl: number, headMm: number, expected: number][] = [
	[1, 300, 2943],
	[1.1, 500, 5395.5],
	[1.8, 400, 7063.2],
	[1.6, 250, 3924]
];
for (const [densityGPerMl, headMm, expected] of HEADS) {
	outsideCase({
		what: `head of ${headMm} mm at ${densityGPerMl} g/mL`,
		source: BY_HAND,
		unit: 'Pa',
		expected,
		got: () => headPressurePa({ densityGPerMl, headMm }),
		tolerance: G_ROUNDED
	});
}

outsideCase({
	what: 'force on a wall 600 mm wide, 500 mm deep, 1.8 g/mL',
	source: BY_HAND,
	unit: 'N',
	expected: 1324.4,
	got: () => wallForce({ densityGPerMl: 1.8, headMm: 500, widthMm: 600 }).forceN,
	tolerance: G_ROUNDED
});
outsideCase({
	what: 'height at which that force acts',
	source: BY_HAND,
	unit: 'mm',
	expected: 167,
	got: () => wallForce({ densityGPerMl: 1.8, headMm: 500, widthMm: 600 }).heightMm,
	tolerance: 0.5
});
outsideCase({
	what: 'uplift on 0.05 m² under 400 mm at 1.8 g/mL',
	source: BY_HAND,
	unit: 'N',
	expected: 353.16,
	got: () => boardUpliftN({ densityGPerMl: 1.8, headMm: 400, areaCm2: 500 }),
	tolerance: G_ROUNDED
});
outsideCase({
	what: 'net uplift on a 20 L core of 0.6 g/mL in 1.1 g/mL',
	source: BY_HAND,
	unit: 'N',
	expected: 98.1,
	got: () => coreUplift({ volumeMl: 20_000, massG: 12_000, liquidGPerMl: 1.1 }).netUpliftN,
	tolerance: G_ROUNDED
});
outsideCase({
	what: 'that core swims this deep when free',
	source: 'Archimedes’ principle, worked by hand',
	unit: 'fraction',
	expected: 0.545,
	got: () => coreUplift({ volumeMl: 20_000, massG: 12_000, liquidGPerMl: 1.1 }).immersedFraction,
	tolerance: 0.0005
});
outsideCase({
	what: 'share of an iceberg under water, ice 0.917 in sea water 1.025 g/mL',
	source: 'University of Kentucky, PHY 211 (1998), problem 10-30, cut to three digits',
	unit: 'fraction',
	expected: 0.894,
	got: () => coreUplift({ volumeMl: 1000, massG: 917, liquidGPerMl: 1.025 }).immersedFraction,
	tolerance: 0.001
});
outsideCase({
	what: 'pull in each of two straps that hold 800 N, plumb legs, no margin',
	source: 'statics, worked by hand: four legs share the load',
	unit: 'N',
	expected: 200,
	got: () => strapForceN({ upliftN: 800, lidMassG: 0, straps: 2, safetyFactor: 1 }),
	tolerance: 1e-9
});
