import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const addingOrderLaw: Law = {
	id: 'adding-order',
	name: 'Thicker part first',
	formula: 'weigh in order of falling viscosity',
	source: 'common practice, no source',
	validity: 'viscosities 0.0001 to 100,000 Pa·s; a data sheet that names an order wins over it'
};

/**
 * The parts in the order in which they are weighed into one cup: the thickest first, so that the
 * thinner one does not lie unmixed under it. Parts of equal viscosity keep their order.
 *
 * @throws RangeError for a viscosity outside 0.0001 to 100,000 Pa·s
 */
export function addingOrder<Part extends { viscosityPaS: number }>(parts: readonly Part[]): Part[] {
	for (const { viscosityPaS } of parts) assertWithin(viscosityPaS, 1e-4, 1e5, 'viscosityPaS');
	return [...parts].sort((a, b) => b.viscosityPaS - a.viscosityPaS);
}
