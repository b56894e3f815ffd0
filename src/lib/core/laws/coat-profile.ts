import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const coatProfileLaw: Law = {
	id: 'coat-profile',
	name: 'Thin first, thickest last',
	formula: 't_k = t_1 + (k − 1)·d, d = 2·(T − n·t_1) / (n·(n − 1)); t_1 = 0.6·T/n unless given',
	source: 'arithmetic series; the share 0.6 for the first coat: common practice, no source',
	validity: 'target 0.5 to 100 mm in 1 to 20 coats; the first no thicker than the mean'
};

/** How thin the first build coat is against the mean of all; common practice, no source. */
const FIRST_SHARE = 0.6;

/**
 * Thickness of each build coat in mm: evenly rising, summing to the target.
 *
 * @param given - `coats` a whole number; `firstMm` above 0 and no more than target / coats
 * @throws RangeError for a target, number of coats or first coat out of range
 */
export function coatThicknessesMm(given: {
	targetMm: number;
	coats: number;
	firstMm?: number;
}): number[] {
	const { targetMm, coats } = given;
	assertWithin(targetMm, 0.5, 100, 'targetMm');
	assertWithin(coats, 1, 20, 'coats');
	if (!Number.isInteger(coats))
		throw new RangeError(`coats is ${coats}; accepted: whole numbers 1 to 20`);
	if (coats === 1) return [targetMm];

	const meanMm = targetMm / coats;
	const firstMm = given.firstMm ?? FIRST_SHARE * meanMm;
	assertWithin(firstMm, 0.05, meanMm, 'firstMm');
	const riseMm = (2 * (meanMm - firstMm)) / (coats - 1);
	return Array.from({ length: coats }, (_, k) => firstMm + k * riseMm);
}
