import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { DENSITY_G_PER_ML, MAX_TIME_S } from '../quantity/limits';
import { GRAVITY_M_PER_S2 } from './sag';

export const brushBackLaw: Law = {
	id: 'brush-back',
	name: 'When a thin coat is brushed back up',
	formula: 't = τ · ln(h²·ρ·g·τ / (z·μ_0)), τ = t_gel / ln(μ_gel / μ_0)',
	source:
		'Jeffreys 1930 with viscosity rising exponentially to 1,000 Pa·s at the gel (assumption); about 20 minutes for a typical detail coat: common practice, no source',
	validity: 'a time to try, never later than the gel: lift a brushful and see whether it stays up'
};

/** Taken as the end of flow; assumption, no source. */
const GEL_VISCOSITY_PA_S = 1000;
/** A coat that thins this far below the top edge still covers the wall; assumption, no source. */
const BARE_EDGE_MM = 20;

/**
 * Time after mixing, in seconds, from which a coat brushed back up no longer drains away: what is
 * left to flow until the gel thins only the top 20 mm of the wall.
 *
 * @param given - initial viscosity 0.01 to 500 Pa·s, coat 0.1 to 10 mm
 * @returns 0 when the coat holds from the start; at most the gel time
 * @throws RangeError for a material or coat out of range
 */
export function brushBackS(given: {
	thicknessMm: number;
	viscosityPaS: number;
	densityGPerMl: number;
	gelTimeS: number;
}): number {
	assertWithin(given.thicknessMm, 0.1, 10, 'thicknessMm');
	assertWithin(given.viscosityPaS, 0.01, 500, 'viscosityPaS');
	assertWithin(given.densityGPerMl, DENSITY_G_PER_ML.min, DENSITY_G_PER_ML.max, 'densityGPerMl');
	assertWithin(given.gelTimeS, 1, MAX_TIME_S, 'gelTimeS');

	const riseS = given.gelTimeS / Math.log(GEL_VISCOSITY_PA_S / given.viscosityPaS);
	const pull = given.densityGPerMl * 1000 * GRAVITY_M_PER_S2;
	const flow = ((given.thicknessMm / 1000) ** 2 * pull * riseS) / (BARE_EDGE_MM / 1000);
	return Math.min(given.gelTimeS, Math.max(0, riseS * Math.log(flow / given.viscosityPaS)));
}
