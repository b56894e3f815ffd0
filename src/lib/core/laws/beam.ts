import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { wallForce } from './head';

export type BeamSupport = 'simple' | 'fixed' | 'cantilever';
/** `rising`: from 0 at one end to the peak at the other; a cantilever has its peak at the fixed end. */
export type BeamLoad = 'uniform' | 'rising';

const SQRT3 = Math.sqrt(3);

/** Greatest of x·(7 − 10 x² + 3 x⁴) / 360, at x² = 1 − √(8/15): a rising load on ends that turn. */
const RISING_SIMPLE = (() => {
	const square = 1 - Math.sqrt(8 / 15);
	return (Math.sqrt(square) * (7 - 10 * square + 3 * square ** 2)) / 360;
})();
/** Greatest of x²·(1 − x)²·(2 + x) / 120, at 4 − 5 x − 5 x² = 0: a rising load on ends held fast. */
const RISING_FIXED = (() => {
	const x = (Math.sqrt(105) - 5) / 10;
	return (x ** 2 * (1 - x) ** 2 * (2 + x)) / 120;
})();

// Greatest deflection = k · w · L⁴ / (E · I); greatest moment = m · w · L².
const BEAMS: Readonly<Record<BeamSupport, Readonly<Record<BeamLoad, { k: number; m: number }>>>> = {
	simple: { uniform: { k: 5 / 384, m: 1 / 8 }, rising: { k: RISING_SIMPLE, m: 1 / (9 * SQRT3) } },
	fixed: { uniform: { k: 1 / 384, m: 1 / 12 }, rising: { k: RISING_FIXED, m: 1 / 20 } },
	cantilever: { uniform: { k: 1 / 8, m: 1 / 2 }, rising: { k: 1 / 30, m: 1 / 6 } }
};

export const beamBendingLaw: Law = {
	id: 'beam-bending',
	name: 'Bending of a board or rib',
	formula: 'w = k · q · L⁴ / (E · I), M = m · q · L², σ = M · h / (2 · I)',
	source:
		'Euler–Bernoulli beam; the coefficients in closed form, as sympy 1.14.0 finds them from the loads',
	validity: 'Straight even beam, span above ten times its depth, deflection below a tenth of it.'
};

export const frameBoardLaw: Law = {
	id: 'frame-board',
	name: 'Bulge of a frame board under the head of the rubber or casting',
	formula: 'q = ρ · g · h² / 2 on I = H · t³ / 12',
	source: 'Hydrostatics and beam theory; the board taken as one strip, simply supported',
	validity: 'Board held at its ends only; held along the foot as well it bulges less.'
};

export interface BeamBending {
	deflectionMm: number;
	momentNMm: number;
	stressPa: number;
}

/** Second moment of area of a rectangle bent across `depthMm`, mm⁴. */
export function rectangleSecondMomentMm4(widthMm: number, depthMm: number): number {
	assertWithin(widthMm, 0.1, 10_000, 'widthMm');
	assertWithin(depthMm, 0.1, 1000, 'depthMm');
	return (widthMm * depthMm ** 3) / 12;
}

/**
 * Greatest deflection, moment and stress of a rectangular beam.
 *
 * @param peakNPerMm - the load per length, its peak where it rises; 0 to 1000
 * @throws RangeError for impossible input
 */
export function beamBending({
	support,
	load,
	peakNPerMm,
	spanMm,
	widthMm,
	depthMm,
	modulusPa
}: {
	support: BeamSupport;
	load: BeamLoad;
	peakNPerMm: number;
	spanMm: number;
	widthMm: number;
	depthMm: number;
	modulusPa: number;
}): BeamBending {
	assertWithin(peakNPerMm, 0, 1000, 'peakNPerMm');
	assertWithin(spanMm, 1, 20_000, 'spanMm');
	assertWithin(modulusPa, 1e6, 1e12, 'modulusPa');
	const secondMomentMm4 = rectangleSecondMomentMm4(widthMm, depthMm);
	const { k, m } = BEAMS[support][load];
	const modulusNPerMm2 = modulusPa * 1e-6;
	const momentNMm = m * peakNPerMm * spanMm ** 2;
	return {
		deflectionMm: (k * peakNPerMm * spanMm ** 4) / (modulusNPerMm2 * secondMomentMm4),
		momentNMm,
		stressPa: ((momentNMm * depthMm) / 2 / secondMomentMm4) * 1e6
	};
}

/**
 * Bulge and stress of one board of the frame, `boardHeightMm` tall and `boardMm` thick, held at its
 * ends, with liquid against it up to `headMm`.
 *
 * @throws RangeError for impossible input; the head can't be above the board
 */
export function frameBoardBending({
	densityGPerMl,
	headMm,
	spanMm,
	boardHeightMm,
	boardMm,
	modulusPa
}: {
	densityGPerMl: number;
	headMm: number;
	spanMm: number;
	boardHeightMm: number;
	boardMm: number;
	modulusPa: number;
}): BeamBending {
	assertWithin(headMm, 0, boardHeightMm, 'headMm');
	const { forceN } = wallForce({ densityGPerMl, headMm, widthMm: spanMm });
	return beamBending({
		support: 'simple',
		load: 'uniform',
		peakNPerMm: forceN / spanMm,
		spanMm,
		widthMm: boardHeightMm,
		depthMm: boardMm,
		modulusPa
	});
}
