import type { UnitSystem } from '$lib/core/quantity/display';
import { measureAt, type FieldErrors } from '../form/read-entries';
import { SHOP_LABELS } from './shop-label';
import { SHOP_NUMBERS } from './shop-numbers';
import type { ShopDraft } from './shop-draft';

/** What every group of the settings' form is given. */
export interface ShopGroupProps {
	draft: ShopDraft;
	system: UnitSystem;
	errors: FieldErrors;
}

/** Whether anything stands in these fields, or is wrong in them; paths may name a group of fields. */
export function isSaid({ draft, errors }: ShopGroupProps, paths: readonly string[]): boolean {
	const hasText = (node: unknown): boolean =>
		typeof node === 'string'
			? node.trim() !== ''
			: typeof node === 'object' && node !== null && Object.values(node).some(hasText);
	return paths.some(
		(path) =>
			hasText(Reflect.get(draft, path)) ||
			Object.keys(errors).some((at) => at === path || at.startsWith(`${path}.`))
	);
}

/** Label, unit and error of one number field of the settings, by its path. */
export function shopField(path: string, { draft, system, errors }: ShopGroupProps) {
	let typed: unknown = draft;
	for (const key of path.split('.')) typed = Reflect.get(Object(typed), key);
	return {
		label: SHOP_LABELS[path] ?? path,
		name: path,
		kind: 'number' as const,
		value: typeof typed === 'string' ? typed : '',
		unit: measureAt(path, SHOP_NUMBERS, system)?.unit || undefined,
		error: errors[path]
	};
}
