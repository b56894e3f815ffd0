import { G_PER_LB, MM_PER_IN } from '../quantity/customary';
import type { UnitSystem } from '../quantity/display';
import type { Law } from '../quantity/figure';

export const liftingConstantsLaw: Law = {
	id: 'lifting-constants',
	name: 'Constants of the revised NIOSH lifting equation',
	formula:
		'LC, 25/H, 1 − 0.003·|V − 75|, 0.82 + 4.5/D (cm) or LC, 10/H, 1 − 0.0075·|V − 30|, 0.82 + 1.8/D (in)',
	source: 'Waters, Putz-Anderson & Garg, DHHS (NIOSH) Publication 94-110, rev. 9/2021, section 1.3',
	validity: 'One system for a whole task: the two differ by up to about 5%.'
};

/** One of the two published sets, in millimeters and grams. */
export interface LiftingSystem {
	/** Units in which its limits are round numbers, and are said. */
	units: UnitSystem;
	loadConstantG: number;
	/** Horizontal distance at which the multiplier is 1, and the greatest allowed. */
	nearMm: number;
	farMm: number;
	knuckleMm: number;
	verticalPerMm: number;
	highestMm: number;
	/** Travel below which the multiplier is 1, its numerator, and the greatest allowed. */
	shortTravelMm: number;
	travelMm: number;
	longestTravelMm: number;
}

export const NIOSH_METRIC: LiftingSystem = {
	units: 'SI',
	loadConstantG: 23_000,
	nearMm: 250,
	farMm: 630,
	knuckleMm: 750,
	verticalPerMm: 0.0003,
	highestMm: 1750,
	shortTravelMm: 250,
	travelMm: 45,
	longestTravelMm: 1750
};

export const NIOSH_US: LiftingSystem = {
	units: 'US',
	loadConstantG: 51 * G_PER_LB,
	nearMm: 10 * MM_PER_IN,
	farMm: 25 * MM_PER_IN,
	knuckleMm: 30 * MM_PER_IN,
	verticalPerMm: 0.0075 / MM_PER_IN,
	highestMm: 70 * MM_PER_IN,
	shortTravelMm: 10 * MM_PER_IN,
	travelMm: 1.8 * MM_PER_IN,
	longestTravelMm: 70 * MM_PER_IN
};
