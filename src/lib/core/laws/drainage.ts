import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { DENSITY_G_PER_ML, MAX_LENGTH_MM, MAX_TIME_S } from '../quantity/limits';
import { GRAVITY_M_PER_S2 } from './sag';

export const drainageLaw: Law = {
	id: 'drainage',
	name: 'What is left of a thin coat on a wall',
	formula: 'h(z, t) = √(μ·z / (ρ·g·t)), no more than the coat laid',
	source:
		'Jeffreys 1930, The draining of a vertical plate, Proc. Camb. Phil. Soc. 26, 204–205 (formula from memory); the same as the load of Derjaguin 1943 that Benilov and Zubkov 2008, J. Fluid Mech. 617, confirm',
	validity:
		'free-flowing, upright wall, no surface tension; viscosity constant for this long (it rises as it gels, so more stays)'
};

export const puddleLaw: Law = {
	id: 'puddle',
	name: 'What gathers in a recess below a wall',
	formula: 'd = h_0 + n · (h_0 − h̄) · H / w',
	source: 'what leaves the walls lies on the floor (balance of volume)',
	validity: 'walls drain into this recess only; no deeper than the recess'
};

interface Film {
	initialMm: number;
	viscosityPaS: number;
	densityGPerMl: number;
	/** Since it was brushed out. */
	timeS: number;
}

function assertFilm({ initialMm, viscosityPaS, densityGPerMl, timeS }: Film): void {
	assertWithin(initialMm, 0.01, 20, 'initialMm');
	assertWithin(viscosityPaS, 0.001, 10_000, 'viscosityPaS');
	assertWithin(densityGPerMl, DENSITY_G_PER_ML.min, DENSITY_G_PER_ML.max, 'densityGPerMl');
	assertWithin(timeS, 0, MAX_TIME_S, 'timeS');
}

/** Distance below the top edge to which the film has thinned by now, in mm. */
function thinnedMm(film: Film): number {
	const pull = film.densityGPerMl * 1000 * GRAVITY_M_PER_S2;
	return ((film.initialMm / 1000) ** 2 * pull * film.timeS * 1000) / film.viscosityPaS;
}

/**
 * Thickness of a draining coat at a place below the top edge of its wall, in mm.
 *
 * @throws RangeError for a film or place out of range
 */
export function drainedFilmMm(film: Film & { belowTopMm: number }): number {
	assertFilm(film);
	assertWithin(film.belowTopMm, 0, MAX_LENGTH_MM, 'belowTopMm');
	const frontMm = thinnedMm(film);
	if (frontMm <= film.belowTopMm) return film.initialMm;
	return film.initialMm * Math.sqrt(film.belowTopMm / frontMm);
}

/** Mean thickness over a wall of this height, in mm; two thirds of the foot's once all has thinned. */
export function meanDrainedFilmMm(film: Film & { wallHeightMm: number }): number {
	assertFilm(film);
	assertWithin(film.wallHeightMm, 0.1, MAX_LENGTH_MM, 'wallHeightMm');
	const share = thinnedMm(film) / film.wallHeightMm;
	return film.initialMm * (share <= 1 ? 1 - share / 3 : 2 / 3 / Math.sqrt(share));
}

/**
 * Depth of the puddle on the floor of a recess, in mm, no more than the recess is deep.
 *
 * @param film - `walls` is how many of its walls drain into it, 1 to 2 for a groove
 */
export function puddleDepthMm(
	film: Film & { wallHeightMm: number; recessWidthMm: number; walls: number }
): number {
	assertWithin(film.recessWidthMm, 0.1, MAX_LENGTH_MM, 'recessWidthMm');
	assertWithin(film.walls, 0, 4, 'walls');
	const leftMm = film.initialMm - meanDrainedFilmMm(film);
	const depthMm = film.initialMm + (film.walls * leftMm * film.wallHeightMm) / film.recessWidthMm;
	return Math.min(depthMm, Math.max(film.wallHeightMm, film.initialMm));
}
