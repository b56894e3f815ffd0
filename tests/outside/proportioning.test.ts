import { correction } from '../../src/lib/core/laws/correction';
import { otherPartG, splitBatchG } from '../../src/lib/core/laws/proportioning';
import {
	densityRatio,
	massPartsBPer100A,
	mixedDensityGPerMl,
	volumePartsBPer100A
} from '../../src/lib/core/laws/volume-ratio';
import {
	massUncertaintyG,
	ratioUncertaintyFraction,
	smallestMassG
} from '../../src/lib/core/laws/weighing-uncertainty';
import { outsideCase } from './outside-case';

const TRADE = 'common practice, no source';
const ARITHMETIC = 'definition of density, worked by hand';

outsideCase({
	what: 'A for 200 g of B at 80:100 by weight',
	source: TRADE,
	unit: 'g',
	expected: 160,
	got: () => otherPartG({ knownG: 200, knownParts: 100, otherParts: 80 }),
	tolerance: 1e-9
});
outsideCase({
	what: 'A for 300 g of B at 41:100 by weight',
	source: TRADE,
	unit: 'g',
	expected: 123,
	got: () => otherPartG({ knownG: 300, knownParts: 100, otherParts: 41 }),
	tolerance: 1e-9
});
for (const i of [0, 1]) {
	outsideCase({
		what: `part ${i + 1} of 150 g at 1:1`,
		source: TRADE,
		unit: 'g',
		expected: 75,
		got: () => splitBatchG({ batchG: 150, parts: [1, 1] })[i] ?? Number.NaN,
		tolerance: 1e-9
	});
}
outsideCase({
	what: 'ρA/ρB of 1:1 by volume and 80:100 by weight',
	source: TRADE,
	unit: '1',
	expected: 0.8,
	got: () => densityRatio({ massParts: [80, 100], volumeParts: [1, 1] }),
	tolerance: 1e-9
});
outsideCase({
	what: 'ρA/ρB of 1:3 by volume and 41:100 by weight',
	source: TRADE,
	unit: '1',
	expected: 1.23,
	got: () => densityRatio({ massParts: [41, 100], volumeParts: [1, 3] }),
	tolerance: 1e-9
});

outsideCase({
	what: 'parts B by volume per 100 A, 100:50 by weight, 1.05 and 1.20 g/mL',
	source: ARITHMETIC,
	unit: 'parts',
	expected: 43.75,
	got: () => volumePartsBPer100A({ massParts: [100, 50], densitiesGPerMl: [1.05, 1.2] }),
	tolerance: 0.005
});
outsideCase({
	what: 'parts B by volume per 100 A, 100:10 by weight, 1.18 and 0.98 g/mL',
	source: ARITHMETIC,
	unit: 'parts',
	expected: 12.04,
	got: () => volumePartsBPer100A({ massParts: [100, 10], densitiesGPerMl: [1.18, 0.98] }),
	tolerance: 0.005
});
outsideCase({
	what: 'parts B by weight per 100 A, 1:1 by volume, 1.02 and 1.12 g/mL',
	source: ARITHMETIC,
	unit: 'parts',
	expected: 109.8,
	got: () => massPartsBPer100A({ volumeParts: [1, 1], densitiesGPerMl: [1.02, 1.12] }),
	tolerance: 0.005
});
outsideCase({
	what: 'density of 100:50 by weight, 1.05 and 1.20 g/mL',
	source: ARITHMETIC,
	unit: 'g/mL',
	expected: 1.0957,
	got: () => mixedDensityGPerMl({ massParts: [100, 50], densitiesGPerMl: [1.05, 1.2] }),
	tolerance: 0.00005
});
outsideCase({
	what: 'density of 60 % resin (1.10) with 40 % filler (2.71)',
	source: ARITHMETIC,
	unit: 'g/mL',
	expected: 1.4429,
	got: () => mixedDensityGPerMl({ massParts: [60, 40], densitiesGPerMl: [1.1, 2.71] }),
	tolerance: 0.00005
});
outsideCase({
	what: 'A to add to 160 g A + 208 g B at 80:100',
	source: TRADE,
	unit: 'g',
	expected: 6.4,
	got: () => correction({ actualG: [160, 208], parts: [80, 100] }).addG[0] ?? Number.NaN,
	tolerance: 1e-9
});

outsideCase({
	what: 'standard uncertainty of a resolution of 0.1',
	source: 'JCGM 100:2008 (GUM), F.2.2.1: 0.29 of the resolution',
	unit: 'g',
	expected: 0.0289,
	got: () => massUncertaintyG({ readabilityG: 0.1, tared: false }),
	tolerance: 0.00005
});

const GUM_RATIOS: [a: number, b: number, d: number, tared: boolean, percent: number][] = [
	[100, 10, 1, false, 2.901],
	[100, 10, 1, true, 4.103],
	[100, 10, 0.1, false, 0.2901],
	[1000, 100, 1, true, 0.4103],
	[500, 50, 0.1, false, 0.058],
	[500, 50, 0.1, true, 0.0821]
];
for (const [a, b, readabilityG, tared, percent] of GUM_RATIOS) {
	outsideCase({
		what: `u(ratio) of ${a} g and ${b} g, d = ${readabilityG} g, ${tared ? 'tared' : 'not tared'}`,
		source: 'JCGM 100:2008 (GUM), 5.1.6, worked separately',
		unit: '%',
		expected: percent,
		got: () => 100 * ratioUncertaintyFraction({ massesG: [a, b], readabilityG, tared }),
		tolerance: 0.0005
	});
}
outsideCase({
	what: 'smallest mass for 0.10 % in scale divisions',
	source: 'USP general chapter 41, smallest starting point of 820 d (k = 2, 0.10 %)',
	unit: 'd',
	expected: 820,
	got: () => smallestMassG({ readabilityG: 1, toleranceFraction: 0.001 }),
	// The pharmacopeia rounds 1/√6 up to 0.41.
	tolerance: { fraction: 0.005 }
});
