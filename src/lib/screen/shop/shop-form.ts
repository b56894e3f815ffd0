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
