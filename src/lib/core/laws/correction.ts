import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G, MAX_VOLUME_ML } from '../quantity/limits';
import { assertParts } from './proportioning';
import { assertDensities } from './volume-ratio';

export const correctionLaw: Law = {
	id: 'correction',
	name: 'Putting a cup back on ratio',
	formula: 'add_i = r_i · max_j(a_j / r_j) − a_i',
	source: 'identity of a mass ratio (arithmetic)',
	validity: 'before mixing only: nothing can be taken out of a cup, so the other part is added'
};

export const cupFillLaw: Law = {
	id: 'cup-fill',
	name: 'Whether the cup holds it',
	formula: 'V = Σ (m_i / ρ_i) ≤ f · V_cup',
	source: 'sum of volumes (arithmetic); fill limit of two thirds: common practice, no source',
	validity: 'fill limit 10% to 95%; stirring needs room above the liquid'
};

/** Room to stir without spilling; common practice, no source. */
export const FILL_LIMIT_FRACTION = 2 / 3;

export interface Correction {
	/** To add of each part, in grams; zero for the part that was over-poured. */
	addG: number[];
	/** The batch after the correction, in grams. */
	batchG: number;
	/** Which part sets the batch: the one poured furthest beyond its share. */
	overPouredPart: number;
}

function assertActual(actualG: readonly number[], parts: readonly number[]): void {
	assertParts(parts);
	assertWithin(actualG.length, parts.length, parts.length, 'number of masses');
	actualG.forEach((mass, i) => assertWithin(mass, 0, MAX_MASS_G, `actualG[${i}]`));
}

/**
 * What to add so that the cup is on ratio again; never less than what is in it.
 *
 * @throws RangeError for masses outside 0 to 1,000,000 g or parts out of range
 */
export function correction({
	actualG,
	parts
}: {
	actualG: readonly number[];
	parts: readonly number[];
}): Correction {
	assertActual(actualG, parts);
	const shares = actualG.map((mass, i) => mass / (parts[i] ?? Number.NaN));
	const largest = Math.max(...shares);
	const overPouredPart = shares.indexOf(largest);
	const addG = actualG.map((mass, i) =>
		i === overPouredPart ? 0 : Math.max(0, (parts[i] ?? Number.NaN) * largest - mass)
	);
	const batchG = largest * parts.reduce((sum, part) => sum + part, 0);
	return { addG, batchG, overPouredPart };
}

/**
 * Whether a cup still holds these masses with room to stir.
 *
 * @throws RangeError for masses, densities, cup volume (1 to 1,000,000 mL) or limit out of range
 */
export function cupFill(given: {
	massesG: readonly number[];
	densitiesGPerMl: readonly number[];
	cupVolumeMl: number;
	fillLimitFraction?: number;
}): { volumeMl: number; limitMl: number; holds: boolean } {
	const { massesG, densitiesGPerMl, cupVolumeMl, fillLimitFraction = FILL_LIMIT_FRACTION } = given;
	assertDensities(densitiesGPerMl);
	assertWithin(densitiesGPerMl.length, massesG.length, massesG.length, 'number of densities');
	massesG.forEach((mass, i) => assertWithin(mass, 0, MAX_MASS_G, `massesG[${i}]`));
	assertWithin(cupVolumeMl, 1, MAX_VOLUME_ML, 'cupVolumeMl');
	assertWithin(fillLimitFraction, 0.1, 0.95, 'fillLimitFraction');

	const volumeMl = massesG.reduce(
		(sum, mass, i) => sum + mass / (densitiesGPerMl[i] ?? Number.NaN),
		0
	);
	const limitMl = fillLimitFraction * cupVolumeMl;
	return { volumeMl, limitMl, holds: volumeMl <= limitMl };
}
