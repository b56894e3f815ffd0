import { beamBending } from '../../src/lib/core/laws/beam';
import { curvedShell } from '../../src/lib/core/laws/curved-shell';
import { plateBending, plateCoefficients } from '../../src/lib/core/laws/plate';
import type { PlateLoad, PlateSupport } from '../../src/lib/core/laws/plate-coefficients';
import { outsideCase } from './outside-case';

const BOOK = 'Timoshenko & Woinowsky-Krieger 1959, Theory of Plates and Shells';
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

// Both tables were summed by hand from a few terms: their third digit is off by up to half a percent.
const HAND_SUMMED = { fraction: 0.005 };

coefficients(
	'alpha',
	'simple',
	'uniform',
	`${BOOK}, Table 8 (from memory)`,
	[
		[1, 0.00406],
		[1.1, 0.00485],
		[1.2, 0.00564],
		[1.4, 0.00705],
		[1.5, 0.00772],
		[1.6, 0.0083],
		[1.8, 0.00931],
		[2, 0.01013],
		[3, 0.01223],
		[4, 0.01282],
		[5, 0.01297]
	],
	1,
	HAND_SUMMED
);
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
	'clamped',
	'uniform',
	`${BOOK}, Table 35 (from memory)`,
	[
		[1, 0.00126],
		[1.2, 0.00172],
		[1.5, 0.0022],
		[1.6, 0.0023],
		[2, 0.00254]
	],
	1,
	HAND_SUMMED
);
coefficients(
	'beta',
	'clamped',
	'uniform',
	`${ROARK} 8a: B1 / 6 (from memory)`,
	[
		[1, 0.3078],
		[1.2, 0.3834],
		[1.6, 0.468],
		[2, 0.4974]
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
coefficients(
	'alpha',
	'simple',
	'rising along the short side',
	`${ROARK} 1e: A / 10.92 (from memory)`,
	[
		[1, 0.022],
		[1.5, 0.042],
		[2, 0.056],
		[2.5, 0.063],
		[3, 0.067],
		[4, 0.07]
	],
	10.92,
	0.001
);
coefficients(
	'beta',
	'clamped',
	'rising along the short side',
	`${BOOK}, Table 38, edge moment (from memory)`,
	[[1, 0.0334]],
	1,
	HAND_SUMMED
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

// Support, load, greatest moment over q L², greatest sag over q L⁴ / E I.
const BEAM_TABLE = [
	['simple', 'uniform', 0.125, 0.01302],
	['simple', 'rising', 0.06415, 0.006522],
	['fixed', 'uniform', 0.08333, 0.002604],
	['fixed', 'rising', 0.05, 0.001309],
	['cantilever', 'uniform', 0.5, 0.125],
	['cantilever', 'rising', 0.16667, 0.03333]
] as const;
const STIFFNESS_N_MM2 = (8000 * 100 * 18 ** 3) / 12;
for (const [support, load, moment, sag] of BEAM_TABLE) {
	const bent = () => beamBending({ ...BOARD, support, load });
	outsideCase({
		what: `${support} beam, load ${load}: moment over q L²`,
		source: 'Roark & Young, beam tables (from memory)',
		unit: 'count',
		expected: moment,
		got: () => bent().momentNMm / 1000 ** 2,
		tolerance: { fraction: 2e-4 }
	});
	outsideCase({
		what: `${support} beam, load ${load}: sag over q L⁴ / E I`,
		source: 'Roark & Young, beam tables (from memory)',
		unit: 'count',
		expected: sag,
		got: () => (bent().deflectionMm * STIFFNESS_N_MM2) / 1000 ** 4,
		tolerance: { fraction: 2e-4 }
	});
}
