import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const shiftAverageLaw: Law = {
	id: 'shift-average',
	name: 'Average over a shift of eight hours',
	formula: 'E = Σ C_i · T_i / 8 h',
	source: '29 CFR 1910.1000(d)(1)(i)',
	validity: 'Up to 24 h of exposure counted against eight; ceilings and short-term limits apart.'
};

/** Eight hours; 29 CFR 1910.1000(d)(1)(i). */
export const SHIFT_S = 8 * 3600;

/**
 * Average over eight hours of what was breathed in turn, in the unit of the concentrations.
 *
 * @throws RangeError for more than 24 h in all or a negative concentration
 */
export function shiftAverage(periods: readonly { concentration: number; timeS: number }[]): number {
	let sum = 0;
	let totalS = 0;
	for (const { concentration, timeS } of periods) {
		assertWithin(concentration, 0, 1e7, 'concentration');
		assertWithin(timeS, 0, 86_400, 'timeS');
		sum += concentration * timeS;
		totalS += timeS;
	}
	assertWithin(totalS, 0, 86_400, 'time of all periods (s)');
	return sum / SHIFT_S;
}
