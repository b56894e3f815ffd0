import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { DENSITY_G_PER_ML } from '../quantity/limits';
import { assertParts } from './proportioning';

/** A, then B. */
export type Pair = readonly [a: number, b: number];

export const volumeRatioLaw: Law = {
	id: 'volume-ratio',
	name: 'Ratio by volume and ratio by weight',
	formula: 'r_A / r_B = (v_A · ρ_A) / (v_B · ρ_B)',
	source: 'definition of density (arithmetic)',
	validity: 'both parts at the same temperature, free of air; density 0.05 to 20 g/mL'
};

export const mixedDensityLaw: Law = {
	id: 'mixed-density',
	name: 'Density of the mix',
	formula: 'ρ = Σ r / Σ (r_i / ρ_i)',
	source: 'sum of masses over sum of volumes (arithmetic)',
	validity: 'no change of volume on mixing and no air stirred in; density 0.05 to 20 g/mL'
};

/** @throws RangeError for a density outside 0.05 to 20 g/mL */
export function assertDensities(densitiesGPerMl: readonly number[]): void {
	for (const density of densitiesGPerMl) {
		assertWithin(density, DENSITY_G_PER_ML.min, DENSITY_G_PER_ML.max, 'densityGPerMl');
	}
}

/**
 * ρA / ρB as the two ratios together require it, a plain number.
 *
 * @throws RangeError for parts outside 0.001 to 100,000
 */
export function densityRatio({ massParts, volumeParts }: { massParts: Pair; volumeParts: Pair }) {
	assertParts(massParts);
	assertParts(volumeParts);
	return massParts[0] / massParts[1] / (volumeParts[0] / volumeParts[1]);
}

/** Parts by volume of B for 100 of A, from the parts by weight and the densities. */
export function volumePartsBPer100A(given: { massParts: Pair; densitiesGPerMl: Pair }): number {
	assertParts(given.massParts);
	assertDensities(given.densitiesGPerMl);
	const [massA, massB] = given.massParts;
	const [densityA, densityB] = given.densitiesGPerMl;
	return (100 * (massB / densityB)) / (massA / densityA);
}

/** Parts by weight of B for 100 of A, from the parts by volume and the densities. */
export function massPartsBPer100A(given: { volumeParts: Pair; densitiesGPerMl: Pair }): number {
	assertParts(given.volumeParts);
	assertDensities(given.densitiesGPerMl);
	const [volumeA, volumeB] = given.volumeParts;
	const [densityA, densityB] = given.densitiesGPerMl;
	return (100 * (volumeB * densityB)) / (volumeA * densityA);
}

/** Density of the mix in g/mL, from parts by weight and the density of each. */
export function mixedDensityGPerMl(given: {
	massParts: readonly number[];
	densitiesGPerMl: readonly number[];
}): number {
	assertParts(given.massParts);
	assertDensities(given.densitiesGPerMl);
	assertWithin(
		given.densitiesGPerMl.length,
		given.massParts.length,
		given.massParts.length,
		'number of densities'
	);
	const mass = given.massParts.reduce((sum, part) => sum + part, 0);
	const volume = given.massParts.reduce(
		(sum, part, i) => sum + part / (given.densitiesGPerMl[i] ?? Number.NaN),
		0
	);
	return mass / volume;
}
