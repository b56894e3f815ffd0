import { beamBending } from '../../src/lib/core/laws/beam';
import { curvedShell } from '../../src/lib/core/laws/curved-shell';
import { plateBending, plateCoefficients } from '../../src/lib/core/laws/plate';
import type { PlateLoad, PlateSupport } from '../../src/lib/core/laws/plate-coefficients';
import { outsideCase } from './outside-case';

const ROARK = 'Roark & Young, Formulas for Stress and Strain, rectangular plates, case';

type Shape = [ratio: number, expected: number];

function coefficients(
	key: 'alpha' | 'beta',
	support: PlateSupport,
	load: PlateLoad,
	source: string,
	shapes: Shape[],
	scale: number,
	tolerance: number | { fraction: number }
): void {
	for (const [ratio, expected] of shapes) {
		outsideCase({
			what: `${support} plate, load ${load}, 1 : ${ratio}, ${key}`,
			source,
			unit: 'count',
			expected,
			got: () =>
				scale * plateCoefficients({ support, load, shortMm: 100, longMm: 100 * ratio })[key],
			tolerance
		});
	}
}

// The table was summed by hand from a few terms: its third digit is off by up to half a percent.
const HAND_SUMMED = { fraction: 0.005 };

coefficients(
	'alpha',
	'simple',
	'uniform',
	`${ROARK} 1a: A / 10.92`,
	[
		[1, 0.0444],
		[1.2, 0.0616],
		[1.4, 0.077],
		[1.6, 0.0906],
		[1.8, 0.1017],
		[2, 0.111],
		[3, 0.1335],
		[4, 0.14],
		[5, 0.1417]
	],
	10.92,
	HAND_SUMMED
);
coefficients(
	'beta',
	'simple',
	'uniform',
	`${ROARK} 1a: B / 6`,
	[
		[1, 0.2874],
		[1.2, 0.3762],
		[1.4, 0.453],
		[1.6, 0.5172],
		[1.8, 0.5688],
		[2, 0.6102],
		[3, 0.7134],
		[4, 0.741],
		[5, 0.7476]
	],
	6,
	HAND_SUMMED
);
coefficients(
	'alpha',
	'simple',
	'rising along the long side',
	`${ROARK} 1d: A / 10.92`,
	[
		[1.5, 0.043],
		[2, 0.06]
	],
	10.92,
	// Two figures, one up or down in the last.
	0.001
);
const WALL = {
	load: 'uniform',
	pressurePa: 5000,
	shortMm: 400,
	longMm: 400,
	thicknessMm: 18,
	modulusPa: 6e9
} as const;
const CASES: [PlateSupport, keyof ReturnType<typeof plateBending>, string, number][] = [
	['simple', 'deflectionMm', 'mm', 0.1624],
	['simple', 'stressPa', 'Pa', 0.71e6],
	['clamped', 'deflectionMm', 'mm', 0.0505],
	['clamped', 'stressPa', 'Pa', 0.76e6]
];
for (const [support, key, unit, expected] of CASES) {
	outsideCase({
		what: `${support} wall 400 × 400 × 18 mm under 5 kPa, E 6 GPa, ${key}`,
		source: `${ROARK} 1a and 8a, worked by hand`,
		unit,
		expected,
		got: () => Number(plateBending({ ...WALL, support })[key]),
		tolerance: HAND_SUMMED
	});
}

const BOARD = { peakNPerMm: 1, spanMm: 1000, widthMm: 100, depthMm: 18, modulusPa: 8e9 };
const TEXTBOOK = 'beam tables of any strength of materials text, worked by hand';
outsideCase({
	what: 'board 100 × 18 mm, 1 m, 1 kN/m, free ends: sag',
	source: TEXTBOOK,
	unit: 'mm',
	expected: 33.49,
	got: () => beamBending({ ...BOARD, support: 'simple', load: 'uniform' }).deflectionMm,
	tolerance: 0.005
});
outsideCase({
	what: 'the same, stress',
	source: TEXTBOOK,
	unit: 'Pa',
	expected: 23.15e6,
	got: () => beamBending({ ...BOARD, support: 'simple', load: 'uniform' }).stressPa,
	tolerance: 5000
});
outsideCase({
	what: 'the same, ends held fast: sag',
	source: TEXTBOOK,
	unit: 'mm',
	expected: 6.698,
	got: () => beamBending({ ...BOARD, support: 'fixed', load: 'uniform' }).deflectionMm,
	tolerance: 0.0005
});
outsideCase({
	what: 'the same, load rising from 0, free ends: sag',
	source: TEXTBOOK,
	unit: 'mm',
	expected: 16.77,
	got: () => beamBending({ ...BOARD, support: 'simple', load: 'rising' }).deflectionMm,
	tolerance: 0.01
});

const ROUND = { pressurePa: 5000, radiusMm: 150, thicknessMm: 6, modulusPa: 3e9 };
for (const [form, expected] of [
	['cylinder', 125_000],
	['dome', 62_500]
] as const) {
	outsideCase({
		what: `hoop stress of a ${form}, radius 150 mm, 6 mm thick, 5 kPa`,
		source: 'boiler formulas p r / t and p r / 2 t, worked by hand',
		unit: 'Pa',
		expected,
		got: () => curvedShell({ ...ROUND, form }).stressPa,
		tolerance: 1e-6
	});
}
