import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { headPressurePa, STANDARD_GRAVITY_M_PER_S2 } from './head';

export const boardUpliftLaw: Law = {
	id: 'board-uplift',
	name: 'Uplift on a board or cope under a head of liquid',
	formula: 'F = ρ · g · h · A',
	source: 'Hydrostatics; any text of fluid mechanics',
	validity: 'Liquid reaches under the whole projected area; head measured to that face.'
};

export const coreUpliftLaw: Law = {
	id: 'core-uplift',
	name: 'Net uplift on a core or pattern in a liquid',
	formula: 'F = (ρ · V − m) · g',
	source: 'Archimedes’ principle',
	validity: 'Fully covered core with liquid able to get under it.'
};

/**
 * Upward force of a liquid on a face above it, newtons.
 *
 * @throws RangeError outside the ranges of `headPressurePa`, or area beyond 0 to 1e6 cm²
 */
export function boardUpliftN({
	densityGPerMl,
	headMm,
	areaCm2
}: {
	densityGPerMl: number;
	headMm: number;
	areaCm2: number;
}): number {
	assertWithin(areaCm2, 0, 1e6, 'areaCm2');
	return headPressurePa({ densityGPerMl, headMm }) * areaCm2 * 1e-4;
}

/**
 * What a core or a pattern does in the liquid that covers it: `netUpliftN` is the force that its
 * fixing must hold (0 when it stays down by its own weight), `immersedFraction` how deep it would
 * swim if it were free (1 when it sinks).
 *
 * @throws RangeError for a volume outside 0.1 mL to 10 000 L or a mass outside 0 to 100 t
 */
export function coreUplift({
	volumeMl,
	massG,
	liquidGPerMl
}: {
	volumeMl: number;
	massG: number;
	liquidGPerMl: number;
}): { netUpliftN: number; floats: boolean; immersedFraction: number } {
	assertWithin(volumeMl, 0.1, 1e7, 'volumeMl');
	assertWithin(massG, 0, 1e8, 'massG');
	assertWithin(liquidGPerMl, 0.1, 25, 'liquidGPerMl');
	const displacedG = volumeMl * liquidGPerMl;
	const floats = displacedG > massG;
	return {
		netUpliftN: floats ? ((displacedG - massG) / 1000) * STANDARD_GRAVITY_M_PER_S2 : 0,
		floats,
		immersedFraction: floats ? massG / displacedG : 1
	};
}
