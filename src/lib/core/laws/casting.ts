import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const pourVolumeLaw: Law = {
	id: 'pour-volume',
	name: 'Volume to mix for a casting',
	formula: 'V_mix = (V_cavity − V_core) / (1 − loss)',
	source: 'Identity; the loss (cup, spill, overfill) is the shop’s own, common practice, no source',
	validity: 'Cavity larger than its core; loss from 0 to 0.5.'
};

export const castingMassLaw: Law = {
	id: 'casting-mass',
	name: 'Mass of a casting',
	formula: 'm = V · ρ',
	source: 'Definition of density',
	validity: 'Volume 0 to 10 000 L; density 0.01 to 25 g/mL.'
};

export const fullMassLaw: Law = {
	id: 'full-mass',
	name: 'Mass of the filled mold',
	formula: 'm_full = Σ m_i',
	source: 'Conservation of mass',
	validity: 'Every part weighed or computed, none left out.'
};

/**
 * Volume to mix so that the cavity can be filled, milliliters.
 *
 * @param lossFraction - share of the mix that never reaches the cavity, 0 to 0.5
 * @throws RangeError when the core is not smaller than the cavity
 */
export function pourVolumeMl({
	cavityMl,
	coreMl = 0,
	lossFraction
}: {
	cavityMl: number;
	coreMl?: number;
	lossFraction: number;
}): number {
	assertWithin(cavityMl, 0.001, 1e7, 'cavityMl');
	assertWithin(coreMl, 0, cavityMl * 0.9999, 'coreMl');
	assertWithin(lossFraction, 0, 0.5, 'lossFraction');
	return (cavityMl - coreMl) / (1 - lossFraction);
}

/**
 * Mass of `volumeMl` of a material, grams.
 *
 * @throws RangeError outside 0 to 10 000 L or 0.01 to 25 g/mL
 */
export function castingMassG({
	volumeMl,
	densityGPerMl
}: {
	volumeMl: number;
	densityGPerMl: number;
}): number {
	assertWithin(volumeMl, 0, 1e7, 'volumeMl');
	assertWithin(densityGPerMl, 0.01, 25, 'densityGPerMl');
	return volumeMl * densityGPerMl;
}

/**
 * Mass of frame, glove, shell and casting together, grams.
 *
 * @param partsG - the mass of each part by name, each 0 to 100 t
 * @throws RangeError naming the part whose mass is impossible
 */
export function fullMassG(partsG: Readonly<Record<string, number>>): number {
	let totalG = 0;
	for (const [name, massG] of Object.entries(partsG)) {
		assertWithin(massG, 0, 1e8, `mass of ${name} (g)`);
		totalG += massG;
	}
	return totalG;
}
