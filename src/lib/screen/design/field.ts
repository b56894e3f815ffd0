export interface FieldOption {
	value: string;
	label: string;
	disabled?: boolean;
}

/** A number field is text with a decimal keyboard: what was typed survives, so an error can quote it. */
export type FieldKind =
	| 'text'
	| 'number'
	| 'whole'
	| 'select'
	| 'textarea'
	| 'checkbox'
	| 'date'
	| 'time'
	| 'datetime-local'
	| 'search'
	| 'file';

/** The id of the field of this name, to be linked to: "parts.0.part" is "at-parts-0-part". */
export function fieldId(name: string): string {
	return `at-${name.replaceAll('.', '-')}`;
}
