import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { neverAllClear, type AirHazard, type NeverAllClear } from './never-all-clear';

export const mixtureLaw: Law = {
	id: 'mixture',
	name: 'Several vapors at once',
	formula: 'E = Σ C_i / L_i, too much when above 1',
	source: '29 CFR 1910.1000(d)(2)(i)',
	validity: 'Effects that add up, as assumed when nothing is known to the contrary.'
};

export const liquidMixtureLimitLaw: Law = {
	id: 'liquid-mixture-limit',
	name: 'Limit of a liquid mixture that evaporates whole',
	formula: 'L = 1 / Σ (f_i / L_i), f by mass, L in mg/m³',
	source: 'ACGIH TLV booklet, appendix on mixtures (from memory)',
	validity: 'Every part evaporates; parts with like effects.'
};

export const mixtureLelLaw: Law = {
	id: 'mixture-lel',
	name: 'Lower explosive limit of a mixture of vapors',
	formula: 'LEL = 100 / Σ (y_i / LEL_i), y in mole percent of the vapors',
	source: 'Le Chatelier’s rule, any text of combustion (from memory)',
	validity: 'Like vapors in air at room temperature; a guide, not a test.'
};

export interface Exposure extends AirHazard {
	/** Concentration and limit in the same unit. */
	concentration: number;
	limit: number;
}

/**
 * Sum of the shares of their limits that the vapors reach. Above 1 is too much; 1 or less is still
 * no all-clear.
 *
 * @throws RangeError for no vapor, a negative concentration or a limit of 0
 */
export function mixtureIndex(
	exposures: readonly Exposure[]
): NeverAllClear & { index: number; exceeded: boolean } {
	assertWithin(exposures.length, 1, 100, 'number of vapors');
	let index = 0;
	for (const { concentration, limit } of exposures) {
		assertWithin(concentration, 0, 1e7, 'concentration');
		assertWithin(limit, 1e-9, 1e7, 'limit');
		index += concentration / limit;
	}
	return { index, exceeded: index > 1, ...neverAllClear(exposures) };
}

function assertWhole(fractions: readonly number[]): void {
	assertWithin(fractions.length, 1, 100, 'number of parts');
	for (const fraction of fractions) assertWithin(fraction, 0, 1, 'fraction');
	assertWithin(
		fractions.reduce((sum, fraction) => sum + fraction, 0),
		0.999,
		1.001,
		'sum of the fractions'
	);
}

/**
 * Limit of a liquid mixture, mg/m³, from the mass fraction and limit of each part.
 *
 * @throws RangeError when the fractions don't add up to 1
 */
export function liquidMixtureLimitMgPerM3(
	parts: readonly { massFraction: number; limitMgPerM3: number }[]
): number {
	assertWhole(parts.map((part) => part.massFraction));
	return (
		1 /
		parts.reduce((sum, { massFraction, limitMgPerM3 }) => {
			assertWithin(limitMgPerM3, 1e-9, 1e7, 'limitMgPerM3');
			return sum + massFraction / limitMgPerM3;
		}, 0)
	);
}

/**
 * Lower explosive limit of mixed vapors, percent by volume.
 *
 * @throws RangeError when the fractions don't add up to 1 or a limit is outside 0.1 to 30 %
 */
export function mixtureLelPct(parts: readonly { moleFraction: number; lelPct: number }[]): number {
	assertWhole(parts.map((part) => part.moleFraction));
	return (
		1 /
		parts.reduce((sum, { moleFraction, lelPct }) => {
			assertWithin(lelPct, 0.1, 30, 'lelPct');
			return sum + moleFraction / lelPct;
		}, 0)
	);
}
