import { moldCost, moldCostLaw, partCost, partCostLaw, type PartCost } from '../laws/cost';
import type { CalendarPlan } from './calendar-plan';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { computed, entered, traced, type Draft } from './trace';

/** What the mold costs, and what each part does with its share of it. */
export function costPlan(
	draft: Draft,
	order: Plan['order'],
	pour: Plan['pour'],
	{ laborS }: CalendarPlan
): { cost: Plan['cost']; life: NonNullable<Plan['life']> } {
	const { shop, pattern, materials } = draft.inputs;
	const cost = moldCost({
		materialPrices: Object.fromEntries(order.map(({ materialId, price }) => [materialId, price])),
		laborS,
		ratePricePerH: shop.laborPerHour
	});
	const casting = order.find(({ materialId }) => materialId === materials.casting.id);
	const perG = casting && casting.boughtG > 0 ? casting.price / casting.boughtG : 0;
	const pourPrice = perG * pour.massG;
	const moldLifePours = shop.moldLifePours ?? DEFAULTS.moldLifePours.value;
	const part = partCost({
		partsCount: pattern.partsWanted,
		moldPrice: Math.max(0, cost.totalPrice - (casting?.price ?? 0)),
		moldLifePours,
		materialPricePerPour: pourPrice,
		laborSPerPour: DEFAULTS.pourLaborS.value,
		ratePricePerH: shop.laborPerHour
	});
	const line = (
		key: keyof Plan['cost'],
		label: string,
		value: number,
		unit: 'currency' | 's' = 'currency'
	) =>
		traced(draft, `cost.${key}`, {
			label,
			value,
			unit,
			law: moldCostLaw,
			inputs: [
				computed('Σ material', 'kits that are bought', cost.materialPrice, 'currency'),
				computed('t', 'hands on the job', laborS, 's'),
				entered('rate', 'labor', shop.laborPerHour, 'currency/h')
			],
			...(key === 'materials'
				? { note: 'Whole kits; what is left over serves the next mold.' }
				: {})
		});
	const totals = {
		materials: line('materials', 'Materials', cost.materialPrice),
		labor: line('labor', 'Labor', cost.laborPrice),
		total: line('total', 'Mold and first pour', cost.totalPrice),
		perPart: traced(draft, 'cost.perPart', {
			label: 'Each part, with its share of the mold',
			value: part.totalPricePerPart,
			unit: 'currency',
			law: partCostLaw,
			inputs: [
				entered('n_parts', 'parts wanted', pattern.partsWanted, 'count'),
				computed(
					'mold',
					'mold without the casting',
					cost.totalPrice - (casting?.price ?? 0),
					'currency'
				),
				computed('material', 'casting a pour', pourPrice, 'currency'),
				shop.moldLifePours === undefined
					? defaultInput('life', 'moldLifePours')
					: entered('life', 'pours before a glove is worn out', moldLifePours, 'count'),
				defaultInput('t', 'pourLaborS'),
				entered('rate', 'labor', shop.laborPerHour, 'currency/h')
			]
		}),
		laborS: line('laborS', 'Hands on the job', laborS, 's')
	};
	return { cost: totals, life: lifeOf(draft, part, moldLifePours) };
}

/** Pours, molds and prices over all parts wanted, the worn molds paid in full. */
function lifeOf(draft: Draft, part: PartCost, moldLifePours: number): NonNullable<Plan['life']> {
	const inputs = [
		entered('n_parts', 'parts wanted', draft.inputs.pattern.partsWanted, 'count'),
		computed('life', 'pours before a glove is worn out', moldLifePours, 'count')
	];
	const number = (
		key: keyof PartCost,
		label: string,
		unit: 'count' | 'currency' = 'currency'
	): number =>
		traced(draft, `life.${key}`, { label, value: part[key], unit, law: partCostLaw, inputs });
	return {
		moldLifePours,
		poursCount: number('poursCount', 'Pours for all parts', 'count'),
		moldsCount: number('moldsCount', 'Gloves worn out by them', 'count'),
		moldPricePerPart: number('moldPricePerPart', 'Mold, for each part'),
		pourPricePerPart: number('pourPricePerPart', 'Casting and labor, for each part'),
		totalPricePerPart: number('totalPricePerPart', 'Each part in all')
	};
}
