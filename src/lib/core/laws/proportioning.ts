import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G, PARTS } from '../quantity/limits';

export const otherPartLaw: Law = {
	id: 'other-part',
	name: 'The other part, by weight',
	formula: 'm_other = m_known · r_other / r_known',
	source: 'identity of a mass ratio (arithmetic)',
	validity: 'mass up to 1,000 kg; parts 0.001 to 100,000, by weight'
};

export const splitBatchLaw: Law = {
	id: 'split-batch',
	name: 'A batch split by weight',
	formula: 'm_i = M · r_i / Σ r',
	source: 'identity of a mass ratio (arithmetic)',
	validity: 'mass up to 1,000 kg; two or more parts, each 0.001 to 100,000, by weight'
};

export const additionLaw: Law = {
	id: 'addition-per-hundred',
	name: 'Addition in parts per hundred',
	formula: 'm_add = m_base · p / 100',
	source: 'definition of parts per hundred by weight (phr)',
	validity: 'base up to 1,000 kg; 0 to 100 parts per hundred of the base'
};

/** @throws RangeError unless there are at least two parts, each within the accepted range */
export function assertParts(parts: readonly number[]): void {
	assertWithin(parts.length, 2, 20, 'number of parts');
	parts.forEach((part, i) => assertWithin(part, PARTS.min, PARTS.max, `parts[${i}]`));
}

/**
 * Mass of one part when the other is known, in grams.
 *
 * @throws RangeError for a mass outside 0 to 1,000,000 g or parts outside 0.001 to 100,000
 */
export function otherPartG(given: {
	knownG: number;
	knownParts: number;
	otherParts: number;
}): number {
	assertWithin(given.knownG, 0, MAX_MASS_G, 'knownG');
	assertWithin(given.knownParts, PARTS.min, PARTS.max, 'knownParts');
	assertWithin(given.otherParts, PARTS.min, PARTS.max, 'otherParts');
	return (given.knownG * given.otherParts) / given.knownParts;
}

/**
 * A batch split into its parts by weight, in grams, in the order of `parts`; they sum to the batch.
 *
 * @throws RangeError for a batch outside 0 to 1,000,000 g, fewer than two parts, or a part out of range
 */
export function splitBatchG({ batchG, parts }: { batchG: number; parts: readonly number[] }) {
	assertWithin(batchG, 0, MAX_MASS_G, 'batchG');
	assertParts(parts);
	const total = parts.reduce((sum, part) => sum + part, 0);
	return parts.map((part) => (batchG * part) / total);
}

/**
 * Mass of a thickener, pigment or accelerator given in parts per hundred of the base, in grams.
 * What the base is (the mixed rubber, or one part of it) is said by the additive's data sheet.
 *
 * @throws RangeError for a base outside 0 to 1,000,000 g or an addition outside 0 to 100
 */
export function additionG(given: { baseG: number; partsPerHundred: number }): number {
	assertWithin(given.baseG, 0, MAX_MASS_G, 'baseG');
	assertWithin(given.partsPerHundred, 0, 100, 'partsPerHundred');
	return (given.baseG * given.partsPerHundred) / 100;
}
