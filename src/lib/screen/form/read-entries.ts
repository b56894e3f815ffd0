import { numberText, type UnitSystem } from '$lib/core/quantity/display';
import { coreValue, measureOf, type Measure, type MeasureId } from './measure';
import { readNumber } from './read-number';

/** What is wrong, by the name of the field. */
export type FieldErrors = Record<string, string>;

/** Fields that hold numbers, by path; "*" stands for the number of a row. */
export type NumberFields = Readonly<Record<string, MeasureId>>;

export interface Entries {
	/** Numbers in core units, texts trimmed, blanks left out. */
	value: unknown;
	errors: FieldErrors;
}

const MOST_SHOWN = 40;

/** What was typed, shortened for a sentence. */
export function quoted(typed: string): string {
	return typed.length > MOST_SHOWN ? `“${typed.slice(0, MOST_SHOWN)}…”` : `“${typed}”`;
}

export function measureAt(
	path: string,
	fields: NumberFields,
	system: UnitSystem
): Measure | undefined {
	const id = fields[path.replace(/(^|\.)\d+(?=\.|$)/g, '$1*')];
	return id && measureOf(id, system);
}

/** Turns a draft of texts into what a schema can judge, and names every number that cannot be read. */
export function readEntries(draft: unknown, fields: NumberFields, system: UnitSystem): Entries {
	const errors: FieldErrors = {};

	function read(node: unknown, path: string): unknown {
		if (typeof node === 'string') return leaf(node, path);
		if (Array.isArray(node)) return node.map((row, i) => read(row, below(path, i)) ?? {});
		if (typeof node !== 'object' || node === null) return undefined;
		const kept = Object.entries(node)
			.map(([key, child]) => [key, read(child, below(path, key))] as const)
			.filter(([, value]) => value !== undefined);
		return kept.length === 0 && path !== '' ? undefined : Object.fromEntries(kept);
	}

	function leaf(typed: string, path: string): string | number | undefined {
		const text = typed.trim();
		if (text === '') return undefined;
		const measure = measureAt(path, fields, system);
		if (!measure) return text;
		const number = readNumber(text);
		if (number !== null) return coreValue(number, measure);
		const unit = measure.unit ? ` in ${measure.unit}` : '';
		errors[path] = `${quoted(text)} is not a number; accepted: a number${unit}, such as 12.5.`;
		return undefined;
	}

	return { value: read(draft, ''), errors };
}

const below = (path: string, key: string | number): string =>
	path === '' ? String(key) : `${path}.${key}`;

/** A limit as the reader types it, with its unit. */
export function limitText(value: number, measure: Measure | undefined): string {
	if (!measure) return numberText(value, 6);
	const text = numberText(measure.fromCore(value), 4);
	return measure.unit === '' ? text : `${text} ${measure.unit}`;
}
