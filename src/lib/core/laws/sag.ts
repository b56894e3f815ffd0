import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { DENSITY_G_PER_ML } from '../quantity/limits';

export const sagLaw: Law = {
	id: 'sag-limit',
	name: 'Thickest coat that stays on a wall',
	formula: 'h = τ_y / (ρ · g · sin θ)',
	source:
		'plug flow of a Bingham film (Irgens, Rheology and Non-Newtonian Fluids, ch. 3); the same limit holds for Herschel–Bulkley',
	validity:
		'yield stress at the end of brushing, 0.1 to 5,000 Pa; slope 1° to 90° from level; an even coat with nothing dripping onto it'
};

export const splitCoatsLaw: Law = {
	id: 'split-coats',
	name: 'Coats above the limit are split',
	formula: 'n = ⌈t / h⌉ coats of t / n',
	source: 'follows from the sag limit (arithmetic)',
	validity: 'up to 50 coats; each waits until the one below has set'
};

/** Standard gravity, m/s²; exact, third General Conference on Weights and Measures 1901. */
export const GRAVITY_M_PER_S2 = 9.80665;

/** Gravity along the wall per volume, in N/m³. */
function pullNPerM3(densityGPerMl: number, slopeDeg: number): number {
	assertWithin(densityGPerMl, DENSITY_G_PER_ML.min, DENSITY_G_PER_ML.max, 'densityGPerMl');
	assertWithin(slopeDeg, 1, 90, 'slopeDeg');
	return densityGPerMl * 1000 * GRAVITY_M_PER_S2 * Math.sin((slopeDeg * Math.PI) / 180);
}

/**
 * Greatest wet thickness that does not run, in mm. Overhangs are no better than upright walls: use 90.
 *
 * @throws RangeError for a yield stress, density or slope out of range
 */
export function largestHoldingMm(given: {
	yieldStressPa: number;
	densityGPerMl: number;
	slopeDeg: number;
}): number {
	assertWithin(given.yieldStressPa, 0.1, 5000, 'yieldStressPa');
	return (1000 * given.yieldStressPa) / pullNPerM3(given.densityGPerMl, given.slopeDeg);
}

/** Yield stress that a material needs to hold a coat of this thickness, in Pa. */
export function neededYieldStressPa(given: {
	thicknessMm: number;
	densityGPerMl: number;
	slopeDeg: number;
}): number {
	assertWithin(given.thicknessMm, 0, 100, 'thicknessMm');
	return (given.thicknessMm / 1000) * pullNPerM3(given.densityGPerMl, given.slopeDeg);
}

/**
 * The same build in coats of which none exceeds `limitMm`, in mm; the sum stays.
 *
 * @throws RangeError for a thickness outside 0 to 100, a limit outside 0.1 to 1,000, or more than 50 coats
 */
export function splitCoatsMm(given: {
	thicknessesMm: readonly number[];
	limitMm: number;
}): number[] {
	assertWithin(given.limitMm, 0.1, 1000, 'limitMm');
	const coats = given.thicknessesMm.flatMap((thicknessMm) => {
		assertWithin(thicknessMm, 0, 100, 'thicknessMm');
		// A hair over the limit is rounding, not a coat that runs.
		const pieces = Math.max(1, Math.ceil(thicknessMm / given.limitMm - 1e-9));
		return Array.from({ length: pieces }, () => thicknessMm / pieces);
	});
	assertWithin(coats.length, 0, 50, 'number of coats after splitting');
	return coats;
}
