import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G } from '../quantity/limits';
import { roundUpTo } from '../quantity/rounding';
import { assertParts } from './proportioning';

export const weighingUncertaintyLaw: Law = {
	id: 'weighing-uncertainty',
	name: 'Uncertainty of a weighed ratio',
	formula: '(u_r / r)² = (u / m_1)² + (u / m_2)²; u = d / √6 with tare, d / √12 without',
	source: 'JCGM 100:2008 (GUM), 5.1.6 and F.2.2.1 (from memory)',
	validity: 'the readability d is the only error counted: a level, calibrated scale out of drafts'
};

export const smallestBatchLaw: Law = {
	id: 'smallest-batch',
	name: 'Smallest batch this scale can weigh',
	formula: 'M = k · u · Σr · √(1/r_1² + 1/r_2²) / tolerance, with the two smallest parts',
	source: 'JCGM 100:2008 (GUM), 5.1.6 and 6.3 (from memory)',
	validity: 'readability 0.001 to 1,000 g; tolerance 0.01% to 50%; k = 2 covers about 95%'
};

/** Coverage factor for about 95 %; GUM 6.3.3 (from memory). */
const COVERAGE = 2;

/** Standard uncertainty of one mass by the scale's readability, in grams. */
export function massUncertaintyG(given: { readabilityG: number; tared: boolean }): number {
	assertWithin(given.readabilityG, 0.001, 1000, 'readabilityG');
	// A tared mass is the difference of two readings, so the variance counts twice.
	return given.readabilityG / Math.sqrt(given.tared ? 6 : 12);
}

/** Standard uncertainty of the ratio of two weighed masses, as a fraction of the ratio. */
export function ratioUncertaintyFraction(given: {
	massesG: readonly [number, number];
	readabilityG: number;
	tared: boolean;
}): number {
	const u = massUncertaintyG(given);
	const [first, second] = given.massesG;
	assertWithin(first, 1e-3, MAX_MASS_G, 'massesG[0]');
	assertWithin(second, 1e-3, MAX_MASS_G, 'massesG[1]');
	return Math.hypot(u / first, u / second);
}

/** Smallest single mass whose expanded uncertainty stays within the tolerance, in grams. */
export function smallestMassG(given: { readabilityG: number; toleranceFraction: number }): number {
	assertWithin(given.toleranceFraction, 1e-4, 0.5, 'toleranceFraction');
	const u = massUncertaintyG({ readabilityG: given.readabilityG, tared: true });
	return (COVERAGE * u) / given.toleranceFraction;
}

/**
 * Smallest batch whose every ratio the scale can weigh within the tolerance, in grams, rounded up
 * to the readability. Parts are weighed into one cup, tared in between.
 *
 * @throws RangeError for a readability, tolerance or parts out of range
 */
export function smallestBatchG(given: {
	readabilityG: number;
	parts: readonly number[];
	toleranceFraction: number;
}): number {
	assertParts(given.parts);
	const total = given.parts.reduce((sum, part) => sum + part, 0);
	const [small = Number.NaN, next = Number.NaN] = [...given.parts].sort((a, b) => a - b);
	const batchG = total * smallestMassG(given) * Math.hypot(1 / small, 1 / next);
	return roundUpTo(batchG, given.readabilityG);
}
