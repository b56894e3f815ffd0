import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G, MAX_TIME_S } from '../quantity/limits';

export const layingRateLaw: Law = {
	id: 'laying-rate',
	name: 'Laying rate by mass',
	formula: 'g/min = cm²/min · t · ρ',
	source: 'mass of a layer (arithmetic)',
	validity: '1 to 10,000 cm² a minute, thickness 0.1 to 100 mm'
};

export const largestCupLaw: Law = {
	id: 'largest-cup',
	name: 'Largest cup one person can lay down in time',
	formula: 'm = q · (t_work − t_mix) / 60',
	source: 'common practice, no source',
	validity:
		'working time at this temperature and cup mass, counted from the start of mixing; one person a cup'
};

export const cupCountLaw: Law = {
	id: 'cup-count',
	name: 'Number of cups',
	formula: 'n = ⌈M / m_largest⌉, each M / n',
	source: 'arithmetic',
	validity: 'up to 500 cups; equal cups, so that each takes the same time'
};

/** Mass that one person lays a minute, in g/min, from the area covered and the thickness. */
export function layingRateGPerMin(given: {
	cm2PerMin: number;
	thicknessMm: number;
	densityGPerMl: number;
}): number {
	assertWithin(given.cm2PerMin, 1, 10_000, 'cm2PerMin');
	assertWithin(given.thicknessMm, 0.1, 100, 'thicknessMm');
	assertWithin(given.densityGPerMl, 0.05, 20, 'densityGPerMl');
	return (given.cm2PerMin * given.thicknessMm * given.densityGPerMl) / 10;
}

/**
 * Largest cup in grams: what one person lays in the working time less the time to mix. More people
 * take more cups, never a larger one.
 *
 * @param given - `limitG` is any other limit on a cup, for example that of self-heating
 * @returns null when mixing leaves no time to lay anything
 * @throws RangeError for a time or rate out of range
 */
export function largestCupG(given: {
	workingTimeS: number;
	mixingTimeS: number;
	layingRateGPerMin: number;
	limitG?: number;
}): number | null {
	const { workingTimeS, mixingTimeS, layingRateGPerMin: rate, limitG = MAX_MASS_G } = given;
	assertWithin(workingTimeS, 1, MAX_TIME_S, 'workingTimeS');
	assertWithin(mixingTimeS, 0, MAX_TIME_S, 'mixingTimeS');
	assertWithin(rate, 0.1, 100_000, 'layingRateGPerMin');
	assertWithin(limitG, 0.1, MAX_MASS_G, 'limitG');
	if (mixingTimeS >= workingTimeS) return null;
	return Math.min(limitG, (rate * (workingTimeS - mixingTimeS)) / 60);
}

/**
 * Equal cups that hold a mass and none of them more than the largest, in grams; they sum to it.
 *
 * @throws RangeError for a mass or cup out of range, or more than 500 cups
 */
export function cupsG({ totalG, largestG }: { totalG: number; largestG: number }): number[] {
	assertWithin(totalG, 0, MAX_MASS_G, 'totalG');
	assertWithin(largestG, 0.1, MAX_MASS_G, 'largestG');
	const cups = Math.ceil(totalG / largestG - 1e-9);
	assertWithin(cups, 0, 500, 'number of cups');
	return Array.from({ length: cups }, () => totalG / cups);
}
