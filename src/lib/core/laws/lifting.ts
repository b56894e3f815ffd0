import { assertWithin } from '../quantity/assert-within';
import { displayQuantity } from '../quantity/display';
import type { Law } from '../quantity/figure';
import { NIOSH_METRIC, type LiftingSystem } from './lifting-constants';
import { frequencyMultiplier, type LiftingDuration } from './lifting-frequency';

export const liftingLaw: Law = {
	id: 'lifting',
	name: 'Recommended weight limit and lifting index',
	formula: 'RWL = LC · HM · VM · DM · AM · FM · CM, LI = L / RWL',
	source: 'Waters, Putz-Anderson & Garg, DHHS (NIOSH) Publication 94-110, rev. 9/2021',
	validity:
		'One person, both hands, steady load, good floor, 19 to 26 °C; not for a sloshing mold, carrying, kneeling or a narrow place.'
};

export type LiftingCoupling = 'good' | 'fair' | 'poor';

export interface Lift {
	/** Hands ahead of the ankles where the lift is judged. */
	horizontalMm: number;
	/** Height of the hands where the lift begins. */
	originHeightMm: number;
	/** Height of the hands where the lift is judged, when that is not where it begins. */
	judgedHeightMm?: number;
	travelMm: number;
	twistDeg: number;
	liftsPerMin: number;
	duration: LiftingDuration;
	coupling: LiftingCoupling;
}

export interface LiftingLimit {
	rwlG: number;
	multipliers: Readonly<Record<'HM' | 'VM' | 'DM' | 'AM' | 'FM' | 'CM', number>>;
	/** Why nothing may be lifted this way; empty when something may. */
	forbidden: string[];
}

function couplingMultiplier(coupling: LiftingCoupling, fromKnuckleHeight: boolean): number {
	if (coupling === 'poor') return 0.9;
	return coupling === 'fair' && !fromKnuckleHeight ? 0.95 : 1;
}

/**
 * Greatest weight that nearly all healthy people can lift this way, grams. A lift beyond the
 * equation's reach (hands too far, too high, too twisted, too often) has the limit 0, as published,
 * and `forbidden` says why.
 *
 * @throws RangeError for impossible input
 */
export function liftingLimit(lift: Lift, system: LiftingSystem = NIOSH_METRIC): LiftingLimit {
	assertWithin(lift.horizontalMm, 0, 3000, 'horizontalMm');
	assertWithin(lift.originHeightMm, 0, 3000, 'originHeightMm');
	const judgedMm = lift.judgedHeightMm ?? lift.originHeightMm;
	assertWithin(judgedMm, 0, 3000, 'judgedHeightMm');
	assertWithin(lift.travelMm, 0, 3000, 'travelMm');
	assertWithin(lift.twistDeg, 0, 180, 'twistDeg');
	const forbidden: string[] = [];
	const length = (mm: number): string => displayQuantity(mm, 'mm', system.units);
	const unless = (tooMuch: boolean, why: string, multiplier: number): number => {
		if (tooMuch) forbidden.push(why);
		return tooMuch ? 0 : multiplier;
	};
	const fm = frequencyMultiplier({
		liftsPerMin: lift.liftsPerMin,
		duration: lift.duration,
		fromKnuckleHeight: lift.originHeightMm >= system.knuckleMm
	});
	const multipliers = {
		HM: unless(
			lift.horizontalMm > system.farMm,
			`hands more than ${length(system.farMm)} ahead of the ankles`,
			system.nearMm / Math.max(lift.horizontalMm, system.nearMm)
		),
		VM: unless(
			judgedMm > system.highestMm,
			`hands higher than ${length(system.highestMm)}`,
			1 - system.verticalPerMm * Math.abs(judgedMm - system.knuckleMm)
		),
		DM: unless(
			lift.travelMm > system.longestTravelMm,
			`lifted through more than ${length(system.longestTravelMm)}`,
			lift.travelMm < system.shortTravelMm ? 1 : 0.82 + system.travelMm / lift.travelMm
		),
		AM: unless(lift.twistDeg > 135, 'twisted by more than 135°', 1 - 0.0032 * lift.twistDeg),
		FM: unless(fm === 0, 'lifted too often for this long', fm),
		CM: couplingMultiplier(lift.coupling, judgedMm >= system.knuckleMm)
	};
	const product = Object.values(multipliers).reduce((result, factor) => result * factor, 1);
	return { rwlG: system.loadConstantG * product, multipliers, forbidden };
}

/**
 * Lifting index: 1 or less is the design goal, above 3 is highly stressful for nearly everyone;
 * null when nothing may be lifted this way.
 *
 * @throws RangeError for a mass outside 0 to 100 t or a limit outside 0 to 23.2 kg
 */
export function liftingIndex({ massG, rwlG }: { massG: number; rwlG: number }): number | null {
	assertWithin(massG, 0, 1e8, 'massG');
	assertWithin(rwlG, 0, 23_200, 'rwlG');
	return rwlG === 0 ? null : massG / rwlG;
}

export const horizontalLaw: Law = {
	id: 'lifting-horizontal',
	name: 'How far ahead of the ankles the hands hold a load',
	formula: 'H = 200 mm + W/2 from hands at V ≥ 250 mm on; H = 250 mm + W/2 below',
	source: 'Waters, Putz-Anderson & Garg, DHHS (NIOSH) Publication 94-110, rev. 9/2021, 1.3.1',
	validity: 'A mold held against the body, when H can’t be measured; up to 3 m deep.'
};

/**
 * Horizontal distance of the hands for a mold held against the body, when it can't be measured.
 * Source: DHHS (NIOSH) 94-110, rev. 9/2021, section 1.3.1.
 *
 * @param moldDepthMm - size of the mold away from the body
 */
export function estimatedHorizontalMm({
	moldDepthMm,
	originHeightMm
}: {
	moldDepthMm: number;
	originHeightMm: number;
}): number {
	assertWithin(moldDepthMm, 0, 3000, 'moldDepthMm');
	assertWithin(originHeightMm, 0, 3000, 'originHeightMm');
	return (originHeightMm >= 250 ? 200 : 250) + moldDepthMm / 2;
}
