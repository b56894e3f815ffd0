import { orderQuantityLaw } from '../laws/order-quantity';
import { defaultInput, type DefaultKey } from './defaults';
import { computed, traced, type Draft } from './trace';

const ENDS = {
	low: { formula: 'm_low = m · (1 − k·u), k = 2', label: 'the least it likely takes' },
	high: { formula: 'm_high = m · (1 + k·u), k = 2', label: 'the most it likely takes' }
} as const;

/** Leaves the trace of both ends of what the plan is likely to use of a material. */
export function traceEnds(
	draft: Draft,
	given: {
		path: string;
		name: string;
		needG: number;
		uncertaintyFraction: number;
		spread: DefaultKey;
		amounts: { lowG: number; highG: number };
	}
): void {
	const { path, name, needG, uncertaintyFraction, spread, amounts } = given;
	const inputs = [
		computed('m', 'what the plan uses', needG, 'g', `${path}.needG`),
		computed('u', 'uncertainty of the sum', uncertaintyFraction, 'fraction'),
		defaultInput('u_1', spread)
	];
	for (const end of ['low', 'high'] as const) {
		const { formula, label } = ENDS[end];
		traced(draft, `${path}.${end}G`, {
			label: `${name}: ${label}`,
			value: amounts[`${end}G`],
			unit: 'g',
			law: { ...orderQuantityLaw, name: 'Likely range of an amount', formula },
			inputs
		});
	}
}
