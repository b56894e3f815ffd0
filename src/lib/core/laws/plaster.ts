import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

/** g/mL of the powder itself, beta hemihydrate; handbook value (from memory). */
export const HEMIHYDRATE_G_PER_ML = 2.63;
/** Water bound on setting, grams per gram: 1.5 × 18.015 / 145.15 (molar masses). */
export const BOUND_WATER_FRACTION = (1.5 * 18.015) / 145.15;

export const plasterMixLaw: Law = {
	id: 'plaster-mix',
	name: 'Water and plaster for a volume of slurry',
	formula: 'm_p = V / (1 / ρ_p + w), m_w = w · m_p',
	source: 'Volumes of water and powder added; ρ_p = 2.63 g/mL handbook value (from memory)',
	validity: 'Water : plaster 0.25 to 1.5 by weight; about 2%, less with air beaten in.'
};

export const plasterDryLaw: Law = {
	id: 'plaster-dry',
	name: 'Mass and density of dry set plaster',
	formula: 'm_dry = m_p · (1 + 1.5 · M_water / M_hemihydrate)',
	source: 'CaSO₄·½H₂O + 1½ H₂O → CaSO₄·2H₂O, molar masses of the elements (IUPAC)',
	validity: 'Pure hemihydrate, fully set and dried below 45 °C; setting expansion left out.'
};

export const plasterConsistencyLaw: Law = {
	id: 'plaster-consistency',
	name: 'Water : plaster ratio from the consistency on the bag',
	formula: 'w = c / 100, c in mL of water per 100 g of plaster',
	source: 'ASTM C472, normal consistency (from memory)',
	validity: 'Consistency 25 to 150; water taken as 1 g/mL.'
};

/** Water : plaster by weight from a consistency in mL of water per 100 g of plaster. */
export function waterRatioFromConsistency(consistencyMlPer100G: number): number {
	assertWithin(consistencyMlPer100G, 25, 150, 'consistencyMlPer100G');
	return consistencyMlPer100G / 100;
}

export interface PlasterMix {
	plasterG: number;
	waterG: number;
	slurryGPerMl: number;
	/** Slurry from a kilogram of plaster. */
	yieldMlPerKg: number;
	dryG: number;
	dryGPerMl: number;
	/** Water that must leave the set plaster before it is dry. */
	dryingWaterG: number;
}

/**
 * What to weigh for `volumeMl` of slurry, and what it becomes.
 *
 * @param waterRatio - water : plaster by weight, 0.25 to 1.5
 * @throws RangeError for impossible input
 */
export function plasterMix({
	volumeMl,
	waterRatio,
	powderGPerMl = HEMIHYDRATE_G_PER_ML
}: {
	volumeMl: number;
	waterRatio: number;
	powderGPerMl?: number;
}): PlasterMix {
	assertWithin(volumeMl, 0.1, 1e7, 'volumeMl');
	assertWithin(waterRatio, 0.25, 1.5, 'waterRatio');
	assertWithin(powderGPerMl, 2, 3, 'powderGPerMl');
	const mlPerG = 1 / powderGPerMl + waterRatio;
	const plasterG = volumeMl / mlPerG;
	const waterG = plasterG * waterRatio;
	const dryG = plasterG * (1 + BOUND_WATER_FRACTION);
	return {
		plasterG,
		waterG,
		slurryGPerMl: (1 + waterRatio) / mlPerG,
		yieldMlPerKg: 1000 * mlPerG,
		dryG,
		dryGPerMl: dryG / volumeMl,
		dryingWaterG: waterG - plasterG * BOUND_WATER_FRACTION
	};
}
