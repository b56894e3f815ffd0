import { kitsLaw, kitsToBuy } from '../laws/kits';
import { combinedSum, orderQuantity, orderQuantityLaw } from '../laws/order-quantity';
import { MAX_MASS_G } from '../quantity/limits';
import type { Sheet } from '../materials/sheet';
import { boughtFraction } from '../materials/tap-water';
import { DEFAULTS, defaultInput } from './defaults';
import { traceEnds } from './order-ends';
import type { Plan } from './plan';
import { PlanError } from './plan-error';
import { shelfOf } from './order-shelf';
import { computed, fromSheet, traced, warn, type Draft } from './trace';

type OrderLine = Plan['order'][number];

/** What one use takes of a material. */
export interface Need {
	sheet: Sheet | undefined;
	massG: number;
	/** A poured volume is known better than a brushed thickness. */
	isPoured?: boolean;
}

/** Kit sizes that the law of kits takes; choice of the plan. */
const MOST_SIZES = 8;

/** Why kits and their price have no range. */
const BOUGHT = 'Whole kits for the safe quantity: what is bought, not an estimate of what is used.';

/** One line for each material used, in kits, the same material in two places bought once, water not at all. */
export function orderPlan(draft: Draft, needs: readonly Need[], finishAt: string): OrderLine[] {
	const byId = new Map<string, { sheet: Sheet; massesG: number[]; isPoured: boolean }>();
	for (const { sheet, massG, isPoured = false } of needs) {
		if (!sheet || massG <= 0) continue;
		const known = byId.get(sheet.id);
		const boughtG = massG * boughtFraction(sheet);
		if (known) known.massesG.push(boughtG);
		else byId.set(sheet.id, { sheet, massesG: [boughtG], isPoured });
	}
	return [...byId.values()].map((use, index) => orderLine(draft, use, index, finishAt));
}

function orderLine(
	draft: Draft,
	{ sheet, massesG, isPoured }: { sheet: Sheet; massesG: readonly number[]; isPoured: boolean },
	index: number,
	finishAt: string
): OrderLine {
	const path = `order.${index}`;
	const spread = isPoured ? 'pourSpread' : 'spreadFraction';
	const fraction = DEFAULTS[spread].value;
	const needG = massesG.reduce((sum, massG) => sum + massG, 0);
	const spreadG = combinedSum(massesG.map((value) => ({ value, fraction })));
	if (needG * 1.5 > MAX_MASS_G) {
		throw new PlanError([
			{
				path: 'pattern.body',
				message: `The mold would take ${Math.round(needG / 1000)} kg of ${sheet.name}; accepted: up to ${MAX_MASS_G / 1500} kg of one material.`
			}
		]);
	}
	const amounts = orderQuantity({ needG, uncertaintyFraction: spreadG / needG });
	traced(draft, `${path}.needG`, {
		label: `${sheet.name}: what the plan uses`,
		value: needG,
		unit: 'g',
		law: orderQuantityLaw,
		inputs: massesG.map((massG, use) => computed(`m_${use + 1}`, `use ${use + 1}`, massG, 'g')),
		low: amounts.lowG,
		high: amounts.highG,
		...(boughtFraction(sheet) < 1 ? { note: 'What is bought of it: without the water.' } : {})
	});
	traceEnds(draft, {
		path,
		name: sheet.name,
		needG,
		uncertaintyFraction: spreadG / needG,
		spread,
		amounts
	});
	const safeG = traced(draft, `${path}.safeG`, {
		label: `${sheet.name}: what to have at hand`,
		value: amounts.orderG,
		unit: 'g',
		law: orderQuantityLaw,
		inputs: [
			computed('m', 'what the plan uses', needG, 'g', `${path}.needG`),
			computed('u', 'uncertainty of the sum', spreadG / needG, 'fraction'),
			defaultInput('u_1', spread)
		]
	});
	return {
		...boughtFor(draft, sheet, safeG, path),
		materialId: sheet.id,
		name: sheet.name,
		needG,
		safeG,
		lowG: amounts.lowG,
		highG: amounts.highG,
		...shelfOf(draft, sheet, finishAt, path),
		...(sheet.shelfLifeDays ? { shelfLifeDays: sheet.shelfLifeDays } : {})
	};
}

function boughtFor(
	draft: Draft,
	sheet: Sheet,
	safeG: number,
	path: string
): Pick<OrderLine, 'kits' | 'boughtG' | 'leftoverG' | 'price'> {
	// The law takes eight sizes; the largest ones are the cheapest by weight.
	const sizes = sheet.kits
		.filter(({ massG }) => massG >= 1)
		.toSorted((a, b) => b.massG - a.massG)
		.slice(0, MOST_SIZES);
	if (sizes.length === 0) {
		const text = `${sheet.name} has no kit sizes, so it is neither ordered nor priced here: enter what the shop buys.`;
		warn(draft, 'warn', 'no-kits', 'order', text);
		return { kits: [], boughtG: 0, leftoverG: 0, price: 0 };
	}
	const choice = kitsToBuy({ needG: safeG, kits: sizes });
	if (sheet.shelfLifeDays && choice.massG - safeG > choice.massG / 2) {
		const text = `More than half of the ${sheet.name} is left over; unopened it keeps ${sheet.shelfLifeDays} days from its date, opened far less.`;
		warn(draft, 'note', 'shelf-life', 'order', text);
	}
	const kits = sizes.flatMap((size, index) => {
		const count = choice.counts[index] ?? 0;
		return count > 0 ? [{ name: size.name, massG: size.massG, count, price: size.price }] : [];
	});
	const inputs = [
		computed('need', 'what to have at hand', safeG, 'g', `${path}.safeG`),
		...kits.map((kit, index) =>
			fromSheet(`n_${index + 1}`, `${kit.count} × ${kit.name}, each`, kit.massG, 'g')
		)
	];
	const base = { law: kitsLaw, inputs };
	return {
		kits,
		boughtG: traced(draft, `${path}.boughtG`, {
			...base,
			label: `${sheet.name}: bought`,
			value: choice.massG,
			unit: 'g',
			note: BOUGHT
		}),
		leftoverG: traced(draft, `${path}.leftoverG`, {
			...base,
			label: `${sheet.name}: left over`,
			value: choice.massG - safeG,
			unit: 'g',
			note: 'The least that is left: all of the safe quantity counts as used.'
		}),
		price: traced(draft, `${path}.price`, {
			...base,
			label: `${sheet.name}: price`,
			value: choice.price,
			unit: 'currency',
			note: BOUGHT
		})
	};
}
