import type { Words } from '../../language/words';
import type { ProcessContext } from '../context';
import type { EventType } from '../events';
import type { ActField } from '../step';

/** The fields that some acts ask for, from the present state, in the words of one language. */
export type FieldMakers = Partial<
	Record<EventType, (context: ProcessContext, words: Words) => ActField[]>
>;

/** Something that must be confirmed. */
export const confirm = (name: string, label: string): ActField => ({
	name,
	label,
	kind: 'confirm',
	required: true
});
/** A few sentences. */
export const longText = (
	name: string,
	label: string,
	required: boolean,
	hint?: string
): ActField => ({
	name,
	label,
	kind: 'long text',
	required,
	...(hint ? { hint } : {})
});
/** A few words. */
export const text = (name: string, label: string, required: boolean, hint?: string): ActField => ({
	name,
	label,
	kind: 'text',
	required,
	...(hint ? { hint } : {})
});
/** A reading, in the unit of the core. */
export const number = (
	name: string,
	label: string,
	unit: string,
	min: number,
	max: number,
	required = true
): ActField => ({
	name,
	label,
	kind: 'number',
	unit,
	min,
	max,
	required
});
/** One of several answers: value, and what the person reads. */
export const choice = (
	name: string,
	label: string,
	pairs: Array<[string, string]>,
	hint?: string
): ActField => ({
	name,
	label,
	kind: 'choice',
	choices: pairs.map(([value, shown]) => ({ value, label: shown })),
	required: true,
	...(hint ? { hint } : {})
});

/** An optional note, as most acts take one. */
export const note = ({ fields }: Words) => longText('note', fields.note, false);
