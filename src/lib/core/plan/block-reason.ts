import type { ProcessEstimate } from '../laws/process-estimate';
import { displayQuantity } from '../quantity/display';
import type { Shop } from './shop';

/** Two ways within 5 % of each other count as equal in price; then fewer days decide. */
export function isBlockBetter(glove: ProcessEstimate, block: ProcessEstimate): boolean {
	const isTie =
		Math.abs(glove.totalPrice - block.totalPrice) <=
		0.05 * Math.max(glove.totalPrice, block.totalPrice);
	return isTie ? block.daysCount < glove.daysCount : block.totalPrice < glove.totalPrice;
}

/** The sentence that says which, with the numbers that decided. */
export function blockReason(
	better: 'glove' | 'block',
	glove: ProcessEstimate,
	block: ProcessEstimate,
	{ currency, units }: Pick<Shop, 'currency' | 'units'>
): string {
	const kg = (massG: number): string =>
		units === 'US' ? displayQuantity(massG, 'g', units) : `${(massG / 1000).toPrecision(3)} kg`;
	const facts =
		`The block takes ${kg(block.rubberG)} of rubber and costs ${currency} ${block.totalPrice.toFixed(0)} in ${block.daysCount} days; ` +
		`the glove takes ${kg(glove.rubberG)} and ${kg(glove.shellG)} of shell, costs ${currency} ${glove.totalPrice.toFixed(0)} in ${glove.daysCount} days ` +
		`(materials by weight used, labor included).`;
	return better === 'block'
		? `A solid block makes more sense here. ${facts} A glove pays for larger and deeper patterns.`
		: `The glove makes more sense here. ${facts}`;
}
