import type { UnitSystem } from '../quantity/display';
import { withCustomary } from '../quantity/with-customary';

/** What was entered, what a sheet, a kit or a piece is called, and what a publication says of itself. */
const AS_IT_IS = ['inputs', 'name', 'materialName', 'title', 'part', 'source'];

/**
 * A plan's sentences with the shop's units first. Numbers stay in the core's units; so does all that was entered.
 * A figure's `inputs` are its own, and are worded; the plan's are not.
 */
export function inShopUnits<T>(plan: T, system: UnitSystem): T {
	return system === 'SI' ? plan : (worded(plan, 0) as T);
}

function worded(node: unknown, depth: number): unknown {
	if (typeof node === 'string') return withCustomary(node, 'US');
	if (Array.isArray(node)) return node.map((item: unknown) => worded(item, depth + 1));
	if (typeof node !== 'object' || node === null) return node;
	return Object.fromEntries(
		Object.entries(node).map(([key, value]: [string, unknown]) => {
			const isKept = AS_IT_IS.includes(key) && !(key === 'inputs' && depth > 0);
			return [key, isKept ? value : worded(value, depth + 1)];
		})
	);
}
