import { castingMassG } from '../../src/lib/core/laws/casting';
import { stackCentroid, tippingDeg, turnedOver } from '../../src/lib/core/laws/centroid';
import { BOUND_WATER_FRACTION, plasterMix } from '../../src/lib/core/laws/plaster';
import { processEstimates } from '../../src/lib/core/laws/process-estimate';
import {
	linearShrinkageFraction,
	patternSizeMm,
	volumeShrinkageFraction
} from '../../src/lib/core/laws/shrinkage';
import { outsideCase } from './outside-case';

outsideCase({
	what: 'water that hemihydrate binds',
	source:
		'Landrin’s analyses, in Project Gutenberg 15708: 20.93 % water in gypsum, 6.2 % in hemihydrate',
	unit: 'fraction',
	expected: (20.93 / 79.07 - 6.2 / 93.8) / (1 + 6.2 / 93.8),
	got: BOUND_WATER_FRACTION,
	tolerance: 0.0005
});
// Water : plaster, slurry g/mL, mL a kilogram, dry g/mL.
const MIXES: [number, number, number, number][] = [
	[0.4, 1.7943, 780.2, 1.5203],
	[0.6, 1.6323, 980.2, 1.2101],
	[0.7, 1.5737, 1080.2, 1.0981],
	[0.8, 1.5251, 1180.2, 1.005],
	[1, 1.449, 1380.2, 0.8594]
];
const VOLUMES = 'volumes added, hemihydrate 2.63 g/mL, worked by hand';
for (const [waterRatio, slurry, yieldMl, dry] of MIXES) {
	const mix = () => plasterMix({ volumeMl: 1000, waterRatio });
	outsideCase({
		what: `slurry at ${waterRatio} water to plaster`,
		source: VOLUMES,
		unit: 'g/mL',
		expected: slurry,
		got: () => mix().slurryGPerMl,
		tolerance: 5e-5
	});
	outsideCase({
		what: `yield at ${waterRatio} water to plaster`,
		source: VOLUMES,
		unit: 'mL/kg',
		expected: yieldMl,
		got: () => mix().yieldMlPerKg,
		tolerance: 0.05
	});
	outsideCase({
		what: `dry density at ${waterRatio} water to plaster`,
		source: VOLUMES,
		unit: 'g/mL',
		expected: dry,
		got: () => mix().dryGPerMl,
		tolerance: 1e-4
	});
}
outsideCase({
	what: 'plaster for 10 L at 0.70',
	source: VOLUMES,
	unit: 'g',
	expected: 9257,
	got: () => plasterMix({ volumeMl: 10_000, waterRatio: 0.7 }).plasterG,
	tolerance: 1
});

outsideCase({
	what: 'shrinkage of a bar, 254.00 to 253.49 mm',
	source: 'ASTM D2566 definition, worked by hand',
	unit: '%',
	expected: 0.2008,
	got: () => 100 * linearShrinkageFraction({ beforeMm: 254, afterMm: 253.49 }),
	tolerance: 5e-5
});
outsideCase({
	what: 'pattern for a 1000 mm part of that material',
	source: 'ASTM D2566 definition, worked by hand',
	unit: 'mm',
	expected: 1002.012,
	got: () => {
		const likely = linearShrinkageFraction({ beforeMm: 254, afterMm: 253.49 });
		return patternSizeMm({ partMm: 1000, stages: [{ low: likely, likely, high: likely }] });
	},
	tolerance: 5e-4
});
for (const [volume, linear] of [
	[1, 0.3345],
	[3, 1.0102]
] as const) {
	outsideCase({
		what: `volume shrinkage with ${linear} % linear`,
		source: 'geometric similarity, worked by hand',
		unit: '%',
		expected: volume,
		got: () => 100 * volumeShrinkageFraction(linear / 100),
		tolerance: 2e-4
	});
}
outsideCase({
	what: 'volume shrinkage with 0.30 % linear',
	source: 'geometric similarity, worked by hand',
	unit: '%',
	expected: 0.8973,
	got: () => 100 * volumeShrinkageFraction(0.003),
	tolerance: 5e-5
});

outsideCase({
	what: 'shrinkage of a test bar, 12.000 to 11.750 in',
	source: 'Frederick’s Passage, patternmaking notes, unknown shrink variable: 11.75 / 12 = 0.97916',
	unit: 'fraction',
	expected: 1 - 0.97916,
	got: () => linearShrinkageFraction({ beforeMm: 304.8, afterMm: 298.45 }),
	// Printed cut off after five digits.
	tolerance: 1e-5
});
outsideCase({
	what: 'a liter of water at 4 °C',
	source: 'litre of 1901 to 1964: a kilogram of water filled 1.000028 dm³',
	unit: 'g',
	expected: 1000,
	got: () => castingMassG({ volumeMl: 1000, densityGPerMl: 0.999972 }),
	tolerance: 0.03
});

// An L of two equal squares: a textbook composite body.
const ELL = [
	{ massG: 100, xMm: 50, yMm: 50, zMm: 10 },
	{ massG: 100, xMm: 150, yMm: 50, zMm: 10 },
	{ massG: 100, xMm: 50, yMm: 150, zMm: 10 }
];
outsideCase({
	what: 'center of an L of three equal squares, 100 mm each',
	source: 'composite bodies, 5/6 of a side; exact geometry',
	unit: 'mm',
	expected: 250 / 3,
	got: () => stackCentroid(ELL).xMm,
	tolerance: 1e-9
});
outsideCase({
	what: 'its height after turning a 40 mm stack over',
	source: 'half a turn; exact geometry',
	unit: 'mm',
	expected: 30,
	got: () => turnedOver(stackCentroid(ELL), { depthMm: 200, heightMm: 40 }).zMm,
	tolerance: 1e-9
});
outsideCase({
	what: 'tipping angle of a cube',
	source: 'diagonal of a square over its edge; exact geometry',
	unit: 'deg',
	expected: 45,
	got: () => tippingDeg({ edgeMm: 50, heightMm: 50 }),
	tolerance: 1e-9
});

outsideCase({
	what: 'rubber in a block round a box 200 × 150 × 100 mm, 25 mm all round and above',
	source: 'mensuration, worked by hand: 250 · 200 · 125 − 200 · 150 · 100 mm³',
	unit: 'mL',
	expected: 3250,
	got: () =>
		processEstimates(
			{ lengthMm: 200, widthMm: 150, heightMm: 100, areaCm2: 1000, volumeMl: 3000 },
			{
				gloveMm: 8,
				gloveExtraFraction: 0.2,
				shellMm: 10,
				blockGapMm: 25,
				layerMm: 12,
				layerExtraFraction: 0.1,
				brushRubberGPerMl: 1.1,
				pourRubberGPerMl: 1.1,
				shellGPerMl: 1.6,
				brushRubberPricePerKg: 20,
				pourRubberPricePerKg: 18,
				shellPricePerKg: 8,
				ratePricePerH: 40
			}
		).find((way) => way.process === 'solid block')?.rubberMl ?? NaN,
	tolerance: 1e-6
});
