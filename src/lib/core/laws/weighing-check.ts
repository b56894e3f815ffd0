import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G } from '../quantity/limits';
import { assertParts } from './proportioning';

export const ratioDeviationLaw: Law = {
	id: 'ratio-deviation',
	name: 'How far a weighing is off ratio',
	formula: 'd = max(a_i / r_i) / min(a_i / r_i) − 1',
	source: 'relative difference of two ratios (arithmetic)',
	validity: 'each part weighed, 0.001 g to 1,000 kg; for two parts it is the error of their ratio'
};

/**
 * Relative deviation of what was weighed from the ratio; 0 is exact, 0.02 is 2 % off, whichever
 * part was over-poured. With more than two parts, that of the worst pair.
 *
 * @throws RangeError for a mass outside 0.001 to 1,000,000 g or parts out of range
 */
export function ratioDeviationFraction(given: {
	actualG: readonly number[];
	parts: readonly number[];
}): number {
	const { actualG, parts } = given;
	assertParts(parts);
	assertWithin(actualG.length, parts.length, parts.length, 'number of masses');
	const shares = actualG.map((mass, i) => {
		assertWithin(mass, 0.001, MAX_MASS_G, `actualG[${i}]`);
		return mass / (parts[i] ?? Number.NaN);
	});
	return Math.max(...shares) / Math.min(...shares) - 1;
}
