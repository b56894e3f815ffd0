import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

/** m/s², exact by definition: 3rd CGPM 1901, standard acceleration of gravity. */
export const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

export const headPressureLaw: Law = {
	id: 'head-pressure',
	name: 'Pressure under a head of liquid',
	formula: 'p = ρ · g · h',
	source: 'Hydrostatics (Pascal, Stevin); g = 9.80665 m/s², 3rd CGPM 1901',
	validity:
		'A casting counts as liquid up to its full head until it gels; head 0 to 10 m, density 0.1 to 25 g/mL.'
};

export const wallForceLaw: Law = {
	id: 'wall-force',
	name: 'Force of a liquid on an upright wall',
	formula: 'F = ρ · g · h² · b / 2, acting at h / 3 above the foot',
	source: 'Hydrostatics; any text of fluid mechanics',
	validity: 'Plane upright wall, liquid on one side only.'
};

interface Head {
	densityGPerMl: number;
	headMm: number;
}

/**
 * Gauge pressure at the foot of a head of liquid, pascals.
 *
 * @throws RangeError outside 0.1 to 25 g/mL or 0 to 10 000 mm
 */
export function headPressurePa({ densityGPerMl, headMm }: Head): number {
	assertWithin(densityGPerMl, 0.1, 25, 'densityGPerMl');
	assertWithin(headMm, 0, 10_000, 'headMm');
	// g/mL × mm is kg/m² exactly, so no factor is needed.
	return densityGPerMl * headMm * STANDARD_GRAVITY_M_PER_S2;
}

/**
 * Force of the liquid on an upright wall `widthMm` wide, and the height above the foot at which it
 * acts.
 *
 * @throws RangeError outside the ranges of `headPressurePa`, or width beyond 0 to 20 000 mm
 */
export function wallForce({ densityGPerMl, headMm, widthMm }: Head & { widthMm: number }): {
	forceN: number;
	heightMm: number;
} {
	assertWithin(widthMm, 0, 20_000, 'widthMm');
	const meanPa = headPressurePa({ densityGPerMl, headMm }) / 2;
	return { forceN: meanPa * headMm * widthMm * 1e-6, heightMm: headMm / 3 };
}
