import { plankFactors, solidAfterS } from '../../src/lib/core/laws/solidification';
import { outsideCase } from './outside-case';

const PLANK =
	'R. Plank 1913, as in the Encyclopaedia of Food Sciences and Nutrition, 2nd ed. 2003, “Freezing”';
const WIDE_MM = 10_000;

// A plate is a box whose other sides are a thousand times as long; a cube has the factors of a sphere.
const SHAPES = [
	['plate', [10, WIDE_MM, WIDE_MM], 1 / 2, 1 / 8],
	['cube, as a sphere', [100, 100, 100], 1 / 6, 1 / 24],
	['long square bar, as a cylinder', [10, 10, WIDE_MM], 1 / 4, 1 / 16]
] as const;
for (const [shape, lengthsMm, p, r] of SHAPES) {
	outsideCase({
		what: `Plank’s P of a ${shape}`,
		source: PLANK,
		unit: '1',
		expected: p,
		got: () => plankFactors(lengthsMm).p,
		tolerance: { fraction: 0.003 }
	});
	outsideCase({
		what: `Plank’s R of a ${shape}`,
		source: PLANK,
		unit: '1',
		expected: r,
		got: () => plankFactors(lengthsMm).r,
		tolerance: { fraction: 0.01 }
	});
}
// Longest and middle side over the shortest.
for (const [long, middle, r] of [
	[1.5, 1, 0.0491],
	[2, 1, 0.0525],
	[2, 2, 0.0719]
] as const) {
	outsideCase({
		what: `Plank’s R of a box 1 by ${middle} by ${long}`,
		source: 'R. Plank 1941, table of boxes (from memory)',
		unit: '1',
		expected: r,
		got: () => plankFactors([50, 50 * middle, 50 * long]).r,
		tolerance: 0.0005
	});
}
outsideCase({
	what: 'plate of wax 20 mm thick, both faces at 20 °C: front at depth x after ρ·L·x²/(2·k·ΔT)',
	source: 'Stefan’s problem, quasi-steady, integrated by hand',
	unit: 's',
	expected: (900_000 * 200 * 0.01 ** 2) / (2 * 0.2 * 37),
	got: () =>
		solidAfterS({
			lengthsMm: [20, WIDE_MM, WIDE_MM],
			densityGPerMl: 0.9,
			latentJPerG: 200,
			specificHeatJPerGK: 2,
			conductivityWPerMK: 0.2,
			resistanceM2KPerW: 0,
			poursAtC: 57,
			meltsAtC: 57,
			roomC: 20
		}),
	tolerance: { fraction: 0.01 }
});
