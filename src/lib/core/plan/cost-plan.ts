import {
	laborPrice,
	moldCost,
	moldCostLaw,
	partCost,
	partCostLaw,
	type PartCost
} from '../laws/cost';
import { boughtFraction } from '../materials/tap-water';
import type { FigureInput } from '../quantity/figure';
import { around } from '../quantity/range';
import type { CalendarPlan } from './calendar-plan';
import { DEFAULTS, defaultInput } from './defaults';
import type { Plan } from './plan';
import { computed, entered, inherited, traced, tradeLaw, type Draft } from './trace';

const handsLaw = tradeLaw(
	'hands-on-time',
	'Hands on the job',
	't = Σ t_i · n_i · (1 ± u)',
	'Stretches of work as the calendar has them; waits count for nothing'
);

/** What the mold costs, and what each part does with its share of it. */
export function costPlan(
	draft: Draft,
	order: Plan['order'],
	pour: Plan['pour'],
	{ laborS, pourLaborS }: CalendarPlan
): { cost: Plan['cost']; life: NonNullable<Plan['life']> } {
	const { shop, pattern, materials } = draft.inputs;
	const cost = moldCost({
		materialPrices: Object.fromEntries(order.map(({ materialId, price }) => [materialId, price])),
		laborS,
		ratePricePerH: shop.laborPerHour
	});
	const casting = order.find(({ materialId }) => materialId === materials.casting.id);
	const perG = casting && casting.boughtG > 0 ? casting.price / casting.boughtG : 0;
	const pourPrice = perG * boughtFraction(materials.casting) * pour.massG;
	const moldLifePours = shop.moldLifePours ?? DEFAULTS.moldLifePours.value;
	const laborAt = (timeS: number): number =>
		laborPrice({ laborS: timeS, ratePricePerH: shop.laborPerHour });
	// The first pour is one of those that the part is charged with.
	const moldPrice = Math.max(0, cost.totalPrice - (casting?.price ?? 0) - laborAt(pourLaborS));
	const moldSpread = DEFAULTS.laborSpread.value * laborAt(laborS - pourLaborS);
	const part = partOf([
		pattern.partsWanted,
		moldPrice,
		pourPrice,
		moldLifePours,
		DEFAULTS.pourLaborS.value,
		shop.laborPerHour
	]);
	const hands: FigureInput = {
		...computed('t', 'hands on the job', laborS, 's'),
		figure: 'cost.laborS'
	};
	const kits = computed('Σ material', 'kits that are bought', cost.materialPrice, 'currency');
	const rate = entered('rate', 'labor', shop.laborPerHour, 'currency/h');
	const line = (
		key: keyof Plan['cost'],
		label: string,
		value: number,
		inputs: FigureInput[],
		of: (...values: number[]) => number
	): number =>
		traced(draft, `cost.${key}`, {
			label,
			value,
			unit: 'currency',
			law: moldCostLaw,
			inputs,
			...inherited(draft, inputs, of),
			...(key === 'materials'
				? {
						note: 'Whole kits at a price, bought for the safe quantity; what is left over serves the next mold.'
					}
				: {})
		});
	const laborTraced = traced(draft, 'cost.laborS', {
		label: 'Hands on the job',
		value: laborS,
		unit: 's',
		law: handsLaw,
		inputs: [
			computed('Σ t_i', 'working stretches of the calendar, times the people', laborS, 's'),
			defaultInput('u', 'laborSpread')
		],
		...around(laborS, DEFAULTS.laborSpread.value)
	});
	const moldInput: FigureInput = {
		...computed('mold', 'mold without the casting and its pour', moldPrice, 'currency'),
		low: Math.max(0, moldPrice - moldSpread),
		high: moldPrice + moldSpread
	};
	const partInputs = [
		entered('n_parts', 'parts wanted', pattern.partsWanted, 'count'),
		moldInput,
		computed('material', 'casting a pour', pourPrice, 'currency'),
		shop.moldLifePours === undefined
			? defaultInput('life', 'moldLifePours')
			: entered('life', 'pours before a glove is worn out', moldLifePours, 'count'),
		defaultInput('t', 'pourLaborS'),
		rate
	];
	const totals = {
		materials: line(
			'materials',
			'Materials',
			cost.materialPrice,
			[kits],
			(material = 0) => material
		),
		labor: line('labor', 'Labor', cost.laborPrice, [hands, rate], (timeS = 0) => laborAt(timeS)),
		total: line(
			'total',
			'Mold and first pour',
			cost.totalPrice,
			[kits, hands, rate],
			(material = 0, timeS = 0) => material + laborAt(timeS)
		),
		perPart: traced(draft, 'cost.perPart', {
			label: 'Each part, with its share of the mold',
			value: part.totalPricePerPart,
			unit: 'currency',
			law: partCostLaw,
			inputs: partInputs,
			...inherited(draft, partInputs, (...values) => partOf(values).totalPricePerPart)
		}),
		laborS: laborTraced
	};
	return { cost: totals, life: lifeOf(draft, part, moldLifePours, partInputs) };
}

/** The cost of a part from the inputs of its figure, in their order. */
function partOf([
	partsCount = 0,
	moldPrice = 0,
	materialPricePerPour = 0,
	moldLifePours = 0,
	laborSPerPour = 0,
	ratePricePerH = 0
]: readonly number[]): PartCost {
	return partCost({
		partsCount,
		moldPrice,
		moldLifePours,
		materialPricePerPour,
		laborSPerPour,
		ratePricePerH
	});
}

/** Pours, molds and prices over all parts wanted, the worn molds paid in full. */
function lifeOf(
	draft: Draft,
	part: PartCost,
	moldLifePours: number,
	inputs: FigureInput[]
): NonNullable<Plan['life']> {
	const number = (
		key: keyof PartCost,
		label: string,
		symbols: readonly string[],
		unit: 'count' | 'currency' = 'currency'
	): number =>
		traced(draft, `life.${key}`, {
			label,
			value: part[key],
			unit,
			law: partCostLaw,
			inputs: inputs.filter(({ symbol }) => symbols.includes(symbol)),
			...inherited(draft, inputs, (...values) => partOf(values)[key])
		});
	const mold = ['n_parts', 'mold', 'life'];
	const pour = ['n_parts', 'material', 't', 'rate'];
	return {
		moldLifePours,
		poursCount: number('poursCount', 'Pours for all parts', ['n_parts'], 'count'),
		moldsCount: number('moldsCount', 'Gloves worn out by them', ['n_parts', 'life'], 'count'),
		moldPricePerPart: number('moldPricePerPart', 'Mold, for each part', mold),
		pourPricePerPart: number('pourPricePerPart', 'Casting and labor, for each part', pour),
		totalPricePerPart: number('totalPricePerPart', 'Each part in all', [...mold, ...pour])
	};
}
