import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G } from '../quantity/limits';
import { roundToReadability, roundUpTo } from '../quantity/rounding';
import { splitBatchG } from './proportioning';
import { ratioDeviationFraction } from './weighing-check';

export const readableSplitLaw: Law = {
	id: 'readable-split',
	name: 'A batch in masses that the scale can show',
	formula: 'smallest part up in steps of d, the others rounded to d, until the ratio holds',
	source: 'ISO 80000-1:2009, annex B, rule B for the rounding (from memory); search: arithmetic',
	validity: 'readability 0.001 to 1,000 g; the batch never shrinks; no more than 2,000 steps'
};

/** Batches that are tried; numerical choice. */
const MAX_STEPS = 2000;

export interface ReadableSplit {
	massesG: number[];
	/** Their sum; not below the batch that was asked for. */
	batchG: number;
	/** Deviation from the ratio that rounding leaves. */
	deviationFraction: number;
}

/**
 * Splits a batch into masses that are multiples of the scale's readability, as little above the
 * batch as the ratio's tolerance lets it be.
 *
 * @returns null when no such batch exists within 2,000 steps of the scale
 *   or 1,000 kg: a finer scale is needed
 * @throws RangeError for a batch, parts, readability or tolerance (0 to 0.5) out of range
 */
export function readableSplit(given: {
	batchG: number;
	parts: readonly number[];
	readabilityG: number;
	toleranceFraction: number;
}): ReadableSplit | null {
	const { batchG, parts, readabilityG, toleranceFraction } = given;
	assertWithin(readabilityG, 0.001, 1000, 'readabilityG');
	assertWithin(toleranceFraction, 0, 0.5, 'toleranceFraction');

	const exactG = splitBatchG({ batchG, parts });
	const smallest = parts.indexOf(Math.min(...parts));
	const startG = Math.max(readabilityG, roundUpTo(exactG[smallest] ?? Number.NaN, readabilityG));

	for (let step = 0; step < MAX_STEPS; step += 1) {
		const anchorG = roundToReadability(startG + step * readabilityG, readabilityG);
		const perPart = anchorG / (parts[smallest] ?? Number.NaN);
		const massesG = parts.map((part) => roundToReadability(part * perPart, readabilityG));
		const sumG = massesG.reduce((sum, mass) => sum + mass, 0);
		if (sumG > MAX_MASS_G) return null;
		const deviationFraction = ratioDeviationFraction({ actualG: massesG, parts });
		const suffices = sumG >= batchG - readabilityG * 1e-6;
		if (suffices && deviationFraction <= toleranceFraction + 1e-12) {
			return { massesG, batchG: roundToReadability(sumG, readabilityG), deviationFraction };
		}
	}
	return null;
}
