import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { steadyPpm, type Room } from './buildup';
import { SHIFT_S, shiftAverage } from './shift-average';

export const exposureDoseLaw: Law = {
	id: 'exposure-dose',
	name: 'What is breathed while a level builds up and falls again',
	formula:
		'D = C_s · (T − (1 − e^(−kT)) / k) + C(T) · (1 − e^(−k(t − T))) / k, k = Q′ / V, E = D / 8 h',
	source:
		'Build-up and purging of a well-mixed room, integrated; average by 29 CFR 1910.1000(d)(1)(i)',
	validity:
		'As for the build-up: the work lasts T, t counts from its start. Above saturation the level stays there.'
};

/** A steady release that ends. */
export interface EndingRelease extends Room {
	releaseS: number;
	/** Saturated vapor, above which nothing more evaporates. */
	ceilingPpm?: number | null;
}

/**
 * Concentration times time from the start of a release until `untilS`, in ppm · s: the build-up, and
 * what lingers after the work. 0 before the start.
 *
 * @throws RangeError for impossible input
 */
export function exposurePpmS(
	{ releaseS, ceilingPpm, ...room }: EndingRelease,
	untilS: number
): number {
	assertWithin(releaseS, 0, 3.2e7, 'releaseS');
	assertWithin(untilS, -3.2e7, 3.2e7, 'untilS');
	if (untilS <= 0) return 0;
	const perS = room.effectiveM3PerH / 3600 / room.roomM3;
	const steady = steadyPpm(room);
	const most = ceilingPpm ?? Infinity;
	const risen = (afterS: number): number => steady * (1 - Math.exp(-perS * afterS));
	const heldFromS = most < steady ? -Math.log(1 - most / steady) / perS : Infinity;
	const workS = Math.min(releaseS, untilS);
	const riseS = Math.min(workS, heldFromS);
	const working =
		steady * riseS - risen(riseS) / perS + (workS > riseS ? most * (workS - riseS) : 0);
	const endPpm = Math.min(most, risen(releaseS));
	const after = Math.max(0, untilS - releaseS);
	return working + (endPpm * (1 - Math.exp(-perS * after))) / perS;
}

/**
 * Average over the eight hours from `fromS`, counted from the start of the release, ppm.
 *
 * @throws RangeError for impossible input
 */
export function eightHourPpm(release: EndingRelease, fromS = 0): number {
	const dosePpmS = exposurePpmS(release, fromS + SHIFT_S) - exposurePpmS(release, fromS);
	return shiftAverage([{ concentration: Math.max(0, dosePpmS) / SHIFT_S, timeS: SHIFT_S }]);
}
