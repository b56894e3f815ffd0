import type { UnitSystem } from '$lib/core/quantity/display';
import { fieldText } from './measure';
import { measureAt, type NumberFields } from './read-entries';

/** Kept data as a form shows it: every number a text in the shop's unit, all else as it is. */
export function fieldTexts(kept: unknown, fields: NumberFields, system: UnitSystem): unknown {
	function texts(node: unknown, path: string): unknown {
		if (typeof node === 'number') {
			const measure = measureAt(path, fields, system);
			return measure ? fieldText(node, measure) : String(node);
		}
		const below = (key: string | number) => (path === '' ? String(key) : `${path}.${key}`);
		if (Array.isArray(node)) return node.map((row, i) => texts(row, below(i)));
		if (typeof node !== 'object' || node === null) return node;
		return Object.fromEntries(
			Object.entries(node).map(([key, child]) => [key, texts(child, below(key))])
		);
	}
	return texts(kept, '');
}
