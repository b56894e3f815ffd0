import type { UnitSystem } from '$lib/core/quantity/display';
import { measureAt, type FieldErrors } from '../form/read-entries';
import type { SheetDraft } from './sheet-draft';
import { SHEET_NUMBERS } from './sheet-numbers';

/** What every group of the data sheet's form is given. */
export interface SheetGroupProps {
	draft: SheetDraft;
	system: UnitSystem;
	/** Errors and contradictions, by field. */
	errors: FieldErrors;
	/** Adds or takes away a row: "add part", "remove kit 2". */
	onrows: (change: string) => void;
}

/** The unit behind a number field of the data sheet's form. */
export function unitAt(path: string, system: UnitSystem): string | undefined {
	return measureAt(path, SHEET_NUMBERS, system)?.unit || undefined;
}
