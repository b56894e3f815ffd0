import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_MASS_G } from '../quantity/limits';

export const combinedUncertaintyLaw: Law = {
	id: 'combined-uncertainty',
	name: 'Uncertainty of a product',
	formula: '(u_y / y)² = Σ (u_i / x_i)²',
	source: 'JCGM 100:2008 (GUM), 5.1.6 (from memory)',
	validity: 'independent factors, each uncertain by no more than 100%'
};

export const orderQuantityLaw: Law = {
	id: 'order-quantity',
	name: 'Safe order quantity',
	formula: 'm_order = m · (1 + k·u) · (1 + margin), k = 2',
	source: 'JCGM 100:2008 (GUM), 6.2.1 for k·u (from memory); margin 5%: common practice, no source',
	validity: 'u up to 100%, margin 0 to 100%; a coat that runs short costs more than a leftover'
};

/** Spilled, scraped off, mixed anew; common practice, no source. */
export const ORDER_MARGIN_FRACTION = 0.05;

/** Root of the sum of squares of relative uncertainties, as a fraction. */
export function combinedFraction(fractions: readonly number[]): number {
	for (const fraction of fractions) assertWithin(fraction, 0, 1, 'fraction');
	return Math.hypot(...fractions);
}

/** Uncertainty of a sum of independent amounts, in their unit. */
export function combinedSum(amounts: readonly { value: number; fraction: number }[]): number {
	return Math.hypot(
		...amounts.map(({ value, fraction }) => {
			assertWithin(value, 0, 1e9, 'value');
			assertWithin(fraction, 0, 1, 'fraction');
			return value * fraction;
		})
	);
}

/**
 * Likely range of an amount and what to order for it, all in grams.
 *
 * @param given - `uncertaintyFraction` is a standard uncertainty (k = 1), 0 to 1
 * @throws RangeError for a mass, uncertainty or margin out of range
 */
export function orderQuantity(given: {
	needG: number;
	uncertaintyFraction: number;
	marginFraction?: number;
}): { lowG: number; highG: number; orderG: number } {
	const { needG, uncertaintyFraction, marginFraction = ORDER_MARGIN_FRACTION } = given;
	assertWithin(needG, 0, MAX_MASS_G, 'needG');
	assertWithin(uncertaintyFraction, 0, 1, 'uncertaintyFraction');
	assertWithin(marginFraction, 0, 1, 'marginFraction');

	const highG = needG * (1 + 2 * uncertaintyFraction);
	const lowG = needG * Math.max(0, 1 - 2 * uncertaintyFraction);
	return { lowG, highG, orderG: highG * (1 + marginFraction) };
}
