import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

const MAX_PRICE = 1e9;
const SECONDS_PER_HOUR = 3600;

export const moldCostLaw: Law = {
	id: 'mold-cost',
	name: 'Cost of a mold',
	formula: 'cost = (Σ material + t · rate) · (1 + overhead)',
	source: 'Job costing (material, labor, overhead on both); common practice, no source',
	validity: 'Prices in one currency; overhead 0 to 5.'
};

export const partCostLaw: Law = {
	id: 'part-cost',
	name: 'Cost of a part over the life of its molds',
	formula: 'cost = (n_molds · mold + n_pours · (material + t · rate)) / n_parts',
	source: 'Job costing; common practice, no source',
	validity: 'n_pours = n_parts / (1 − rejects), n_molds = n_pours / life, both rounded up.'
};

export interface MoldCost {
	materialPrice: number;
	laborPrice: number;
	overheadPrice: number;
	totalPrice: number;
}

/**
 * Price of `laborS` seconds at a price per hour.
 *
 * @throws RangeError for a negative or absurd time or rate
 */
export function laborPrice({
	laborS,
	ratePricePerH
}: {
	laborS: number;
	ratePricePerH: number;
}): number {
	assertWithin(laborS, 0, 3.6e7, 'laborS');
	assertWithin(ratePricePerH, 0, 1e6, 'ratePricePerH');
	return (laborS / SECONDS_PER_HOUR) * ratePricePerH;
}

/**
 * Cost of one mold: materials by name, labor and overhead, labor never left out.
 *
 * @throws RangeError naming the line whose price is impossible
 */
export function moldCost({
	materialPrices,
	laborS,
	ratePricePerH,
	overheadFraction = 0
}: {
	materialPrices: Readonly<Record<string, number>>;
	laborS: number;
	ratePricePerH: number;
	overheadFraction?: number;
}): MoldCost {
	assertWithin(overheadFraction, 0, 5, 'overheadFraction');
	let materialPrice = 0;
	for (const [name, price] of Object.entries(materialPrices)) {
		assertWithin(price, 0, MAX_PRICE, `price of ${name}`);
		materialPrice += price;
	}
	const labor = laborPrice({ laborS, ratePricePerH });
	const overheadPrice = (materialPrice + labor) * overheadFraction;
	return {
		materialPrice,
		laborPrice: labor,
		overheadPrice,
		totalPrice: materialPrice + labor + overheadPrice
	};
}

// A quotient that is whole but for rounding must not cost one more.
const roundedUp = (value: number): number => Math.ceil(value - 1e-9);

export interface PartCost {
	/** Pours made to get the wanted parts, rejects included. */
	poursCount: number;
	moldsCount: number;
	moldPricePerPart: number;
	pourPricePerPart: number;
	totalPricePerPart: number;
}

/**
 * Cost of one good part when `partsCount` are wanted: a mold wears out after `moldLifePours` pours,
 * a rejected part wears it as well, and the last mold is paid for in full.
 *
 * @throws RangeError for impossible input
 */
export function partCost({
	partsCount,
	moldPrice,
	moldLifePours,
	materialPricePerPour,
	laborSPerPour,
	ratePricePerH,
	rejectFraction = 0
}: {
	partsCount: number;
	moldPrice: number;
	moldLifePours: number;
	materialPricePerPour: number;
	laborSPerPour: number;
	ratePricePerH: number;
	rejectFraction?: number;
}): PartCost {
	assertWithin(partsCount, 1, 1e6, 'partsCount');
	assertWithin(moldPrice, 0, MAX_PRICE, 'moldPrice');
	assertWithin(moldLifePours, 1, 1e6, 'moldLifePours');
	assertWithin(materialPricePerPour, 0, MAX_PRICE, 'materialPricePerPour');
	assertWithin(rejectFraction, 0, 0.9, 'rejectFraction');
	const poursCount = roundedUp(partsCount / (1 - rejectFraction));
	const moldsCount = roundedUp(poursCount / moldLifePours);
	const pourPrice = materialPricePerPour + laborPrice({ laborS: laborSPerPour, ratePricePerH });
	const moldPricePerPart = (moldsCount * moldPrice) / partsCount;
	const pourPricePerPart = (poursCount * pourPrice) / partsCount;
	return {
		poursCount,
		moldsCount,
		moldPricePerPart,
		pourPricePerPart,
		totalPricePerPart: moldPricePerPart + pourPricePerPart
	};
}
