import { beamBending } from '../../src/lib/core/laws/beam';
import {
	PLATE_TABLES,
	type PlateLoad,
	type PlateSupport
} from '../../src/lib/core/laws/plate-coefficients';
import { plateCoefficients } from '../../src/lib/core/laws/plate';
import { shellThickness } from '../../src/lib/core/laws/shell-thickness';
import { outsideCase } from './outside-case';

/** Eight elements of fifth order along the short side, ν = 0.3; their fourth digit no longer moves. */
const ELEMENTS = 'Python library scikit-fem 12.0.2, thin plate of Argyris elements';

// Support, load, long over short side, greatest deflection over q a⁴ / D, greatest moment over q a².
const PLATES: [PlateSupport, PlateLoad, ratio: number, alpha: number, beta: number][] = [
	['simple', 'uniform', 1, 0.004062, 0.047886],
	['simple', 'uniform', 1.1, 0.004869, 0.055484],
	['simple', 'uniform', 1.2, 0.005651, 0.062682],
	['simple', 'uniform', 1.4, 0.007085, 0.075549],
	['simple', 'uniform', 1.5, 0.007724, 0.08116],
	['simple', 'uniform', 1.6, 0.008308, 0.086229],
	['simple', 'uniform', 1.8, 0.009316, 0.094847],
	['simple', 'uniform', 2, 0.010129, 0.101683],
	['simple', 'uniform', 3, 0.012233, 0.118861],
	['simple', 'uniform', 4, 0.012819, 0.123459],
	['simple', 'uniform', 5, 0.012971, 0.124625],
	['clamped', 'uniform', 1, 0.001265, 0.051339],
	['clamped', 'uniform', 1.2, 0.001725, 0.063902],
	['clamped', 'uniform', 1.5, 0.002197, 0.075658],
	['clamped', 'uniform', 1.6, 0.0023, 0.078033],
	['clamped', 'uniform', 2, 0.002533, 0.082865],
	['simple', 'rising along the short side', 1, 0.002054, 0.026975],
	['simple', 'rising along the short side', 1.5, 0.003879, 0.042947],
	['simple', 'rising along the short side', 2, 0.005079, 0.052855],
	['simple', 'rising along the short side', 2.5, 0.005761, 0.058274],
	['simple', 'rising along the short side', 3, 0.006128, 0.061161],
	['simple', 'rising along the short side', 4, 0.00642, 0.063399],
	['simple', 'rising along the long side', 1.5, 0.003993, 0.04278],
	['simple', 'rising along the long side', 2, 0.005443, 0.055971],
	['clamped', 'rising along the short side', 1, 0.000643, 0.033441]
];
for (const [support, load, ratio, alpha, beta] of PLATES) {
	for (const [key, expected] of [
		['alpha', alpha],
		['beta', beta]
	] as const) {
		const row = PLATE_TABLES[support][load].find(({ x }) => Math.abs(x * ratio - 1) < 1e-9);
		outsideCase({
			what: `${support} plate, load ${load}, 1 : ${ratio}, ${key}`,
			source: ELEMENTS,
			unit: 'count',
			expected,
			got: () =>
				row?.[key] ?? plateCoefficients({ support, load, shortMm: 100, longMm: 100 * ratio })[key],
			// The law's own words: four digits in a row of its table, 1 % between rows.
			tolerance: { fraction: row ? 0.001 : 0.01 }
		});
	}
}
const square = { load: 'uniform', pressurePa: 3000, shortMm: 300, longMm: 300 } as const;
for (const [support, deflectionMm] of [
	['simple', 1.07797],
	['clamped', 0.33576]
] as const) {
	outsideCase({
		what: `${support} wall 300 × 300 mm, 3 kPa, E 1 GPa: thickness that bulges ${deflectionMm} mm`,
		source: ELEMENTS,
		unit: 'mm',
		expected: 10,
		got: () =>
			shellThickness({
				...square,
				support,
				modulusPa: 1e9,
				allowedDeflectionMm: deflectionMm
			}).thicknessMm,
		tolerance: 0.01
	});
}

const SYMPY = 'Python library sympy 1.14.0, physics.continuum_mechanics.beam';
// Support, load, greatest moment over q L², greatest sag over q L⁴ / E I; a cantilever's load falls towards its free end.
const BEAMS = [
	['simple', 'uniform', 0.125, 0.01302083],
	['simple', 'rising', 0.06415003, 0.006522184],
	['fixed', 'uniform', 0.08333333, 0.002604167],
	['fixed', 'rising', 0.05, 0.001308538],
	['cantilever', 'uniform', 0.5, 0.125],
	['cantilever', 'rising', 0.1666667, 0.03333333]
] as const;
const BOARD = { peakNPerMm: 1, spanMm: 1000, widthMm: 100, depthMm: 18, modulusPa: 8e9 };
const STIFFNESS_N_MM2 = (8000 * 100 * 18 ** 3) / 12;
for (const [support, load, moment, sag] of BEAMS) {
	const bent = () => beamBending({ ...BOARD, support, load });
	outsideCase({
		what: `${support} beam, load ${load}: moment over q L²`,
		source: SYMPY,
		unit: 'count',
		expected: moment,
		got: () => bent().momentNMm / 1000 ** 2,
		tolerance: { fraction: 1e-6 }
	});
	outsideCase({
		what: `${support} beam, load ${load}: sag over q L⁴ / E I`,
		source: SYMPY,
		unit: 'count',
		expected: sag,
		got: () => (bent().deflectionMm * STIFFNESS_N_MM2) / 1000 ** 4,
		tolerance: { fraction: 1e-6 }
	});
}
