import { correction } from '../../src/lib/core/laws/correction';
import { ratioContradiction } from '../../src/lib/core/laws/ratio-contradiction';
import { readableSplit } from '../../src/lib/core/laws/readable-split';
import { ratioDeviationFraction } from '../../src/lib/core/laws/weighing-check';
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

const TWO_CYCLE = 'mixture chart of two-cycle fuel, ounces of oil to a US gallon of 128';
for (const [parts, ounces] of [
	[32, 4],
	[40, 3.2],
	[50, 2.6]
] as const) {
	outsideCase({
		what: `oil for a gallon at ${parts} : 1`,
		source: TWO_CYCLE,
		unit: 'oz',
		expected: ounces,
		got: () => otherPartG({ knownG: 128, knownParts: parts, otherParts: 1 }),
		// Printed with one digit after the point.
		tolerance: 0.05
	});
}
outsideCase({
	what: 'gasoline to add when the oil for two gallons, 5.1 oz, went into one at 50 : 1',
	source: TWO_CYCLE,
	unit: 'oz',
	expected: 128,
	got: () => correction({ actualG: [128, 5.1], parts: [50, 1] }).addG[0] ?? Number.NaN,
	// Fifty times what the printed ounces may be off.
	tolerance: 2.5
});

const MORTAR =
	'Gillette & Hill 1908, Concrete Construction: 1 : 2 by weight, barrel of 380 lb and 4 ft³, sand of 90 lb/ft³';
/** lb/ft³ in g/mL. */
const POUNDS = 0.016018463;
const mortar = {
	massParts: [1, 2],
	densitiesGPerMl: [(380 / 4) * POUNDS, 90 * POUNDS]
} as const;
outsideCase({
	what: 'parts of sand by volume to 100 of cement',
	source: MORTAR,
	unit: 'parts',
	expected: 211,
	got: () => volumePartsBPer100A(mortar),
	tolerance: 0.5
});
outsideCase({
	what: 'the same from a sheet that says 1 : 2 by volume as well, which contradicts itself',
	source: MORTAR,
	unit: 'parts',
	expected: 211,
	got: () =>
		ratioContradiction({ ...mortar, volumeParts: [1, 2] })?.needed.volumePartsBPer100A ?? NaN,
	tolerance: 0.5
});

const CONVERGENTS = 'Python library sympy 1.14.0, convergents of continued fractions';
for (const [name, ratio, tolerance, a, b] of [
	['π', Math.PI, 1e-3, 22, 7],
	['π', Math.PI, 1e-7, 355, 113],
	['√2', Math.SQRT2, 1e-4, 99, 70],
	['e', Math.E, 2e-5, 193, 71]
] as const) {
	outsideCase({
		what: `smallest batch of whole grams at ${name} : 1 within ${tolerance}`,
		source: CONVERGENTS,
		unit: 'g',
		expected: a + b,
		got: () =>
			readableSplit({
				batchG: 1,
				parts: [ratio, 1],
				readabilityG: 1,
				toleranceFraction: tolerance
			})?.batchG ?? NaN,
		tolerance: 0
	});
}
outsideCase({
	what: 'percent error of 121 where 120 is right, as the deviation of a 1 : 1 weighing',
	source: 'pharmaceutical calculations, percent error: (121 − 120) / 120 = 0.833 %',
	unit: '%',
	expected: 0.833,
	got: () => 100 * ratioDeviationFraction({ actualG: [121, 120], parts: [1, 1] }),
	tolerance: 0.0005
});
