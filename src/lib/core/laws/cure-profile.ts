import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_TIME_S } from '../quantity/limits';
import { speedFactor, type CureRate } from './cure-rate';

export const equivalentTimeLaw: Law = {
	id: 'equivalent-time',
	name: 'Cure time through a changing temperature',
	formula: 't_e = ∫ k(T(t)) / k(T_ref) dt',
	source: 'ASTM C1074, equivalent age, for any single activation energy',
	validity: 'temperature of the material itself; straight lines between the points given'
};

export interface ProfilePoint {
	atS: number;
	temperatureC: number;
}

interface Cure {
	referenceC: number;
	rate: CureRate;
}

/** Simpson panels for each straight stretch; within 1e-7 over a stretch of 40 K. */
const PANELS = 64;

function assertProfile(profile: readonly ProfilePoint[]): void {
	assertWithin(profile.length, 1, 10_000, 'number of profile points');
	profile.forEach(({ atS }, i) => {
		assertWithin(atS, profile[i - 1]?.atS ?? 0, MAX_TIME_S, `profile[${i}].atS`);
	});
}

/** Equivalent time of one straight stretch from `from` until `toS`, in seconds. */
function stretchS(from: ProfilePoint, to: ProfilePoint, toS: number, cure: Cure): number {
	const spanS = to.atS - from.atS;
	const lengthS = toS - from.atS;
	if (lengthS <= 0) return 0;
	// A jump has no slope, and its length in time counts for nothing.
	const slope = spanS < 1e-3 ? 0 : (to.temperatureC - from.temperatureC) / spanS;
	const speed = (s: number) =>
		speedFactor({ temperatureC: from.temperatureC + slope * s, ...cure });
	if (slope === 0) return lengthS * speed(0);
	let weighted = speed(0) + speed(lengthS);
	for (let i = 1; i < PANELS; i += 1)
		weighted += (i % 2 === 1 ? 4 : 2) * speed((lengthS * i) / PANELS);
	return (weighted * lengthS) / (3 * PANELS);
}

/**
 * Time at the reference temperature that cures as far as this profile does until `untilS`, in
 * seconds. After its last point the profile stays at its last temperature.
 *
 * @param profile - in order of time, the first point at or after 0; before it, its temperature holds
 * @throws RangeError for a profile out of order or out of the temperature range
 */
export function equivalentTimeS(
	profile: readonly ProfilePoint[],
	untilS: number,
	cure: Cure
): number {
	assertProfile(profile);
	assertWithin(untilS, 0, MAX_TIME_S, 'untilS');
	const points = wholeProfile(profile);

	let totalS = 0;
	for (let i = 1; i < points.length; i += 1) {
		const from = points[i - 1] as ProfilePoint;
		const to = points[i] as ProfilePoint;
		if (from.atS >= untilS) break;
		totalS += stretchS(from, to, Math.min(to.atS, untilS), cure);
	}
	return totalS;
}

/**
 * When a cure that takes `neededS` at the reference temperature is reached on this profile, in
 * seconds after its start; null when it is not within 60 days.
 */
export function reachedAfterS(
	profile: readonly ProfilePoint[],
	neededS: number,
	cure: Cure
): number | null {
	assertProfile(profile);
	assertWithin(neededS, 0, MAX_TIME_S, 'neededS');
	const points = wholeProfile(profile);
	let leftS = neededS;
	for (let i = 1; i < points.length; i += 1) {
		const from = points[i - 1] as ProfilePoint;
		const to = points[i] as ProfilePoint;
		const wholeS = stretchS(from, to, to.atS, cure);
		if (wholeS >= leftS) return from.atS + shareOfStretchS(from, to, leftS, cure);
		leftS -= wholeS;
	}
	return null;
}

/** How long into a stretch its cure has reached `neededS`, in seconds. */
function shareOfStretchS(
	from: ProfilePoint,
	to: ProfilePoint,
	neededS: number,
	cure: Cure
): number {
	let lowS = 0;
	let highS = to.atS - from.atS;
	// Fifty halvings of sixty days reach far below a second.
	for (let i = 0; i < 50; i += 1) {
		const middleS = (lowS + highS) / 2;
		if (stretchS(from, to, from.atS + middleS, cure) < neededS) lowS = middleS;
		else highS = middleS;
	}
	return highS;
}

/** The profile from 0 to the longest time, held at its ends. */
function wholeProfile(profile: readonly ProfilePoint[]): ProfilePoint[] {
	const first = profile[0] as ProfilePoint;
	const last = profile[profile.length - 1] as ProfilePoint;
	return [{ ...first, atS: 0 }, ...profile, { ...last, atS: MAX_TIME_S }];
}
