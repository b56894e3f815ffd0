import { numberText, type UnitSystem } from '$lib/core/quantity/display';
import { measureOf, type Measure, type MeasureId } from './measure';
import { readMeasured } from './read-measured';

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
		const value = readMeasured(text, measure);
		if (value !== null) return value;
		errors[path] = `${quoted(text)} is not a number; accepted: ${acceptedNumber(measure)}.`;
		return undefined;
	}

	return { value: read(draft, ''), errors };
}

const below = (path: string, key: string | number): string =>
	path === '' ? String(key) : `${path}.${key}`;

/** No space before a percent sign, as American English sets it. */
function withUnit(number: string, unit: string): string {
	return unit === '' || unit === '%' ? number + unit : `${number} ${unit}`;
}

/** "a whole number such as 2", "a number such as 12.5 in": what a box takes. */
export function acceptedNumber({ unit, isWhole }: Measure, whole = isWhole): string {
	const example = whole ? '2' : '12.5';
	return `a ${whole ? 'whole ' : ''}number such as ${withUnit(example, unit)}`;
}

/**
 * A limit as the reader types it, with its unit, in few digits and on the safe side: what is said to be
 * accepted is accepted.
 */
export function limitText(value: number, measure: Measure | undefined, side: 'least' | 'most') {
	if (!measure) return numberText(value, 6);
	const exact = Number(measure.fromCore(value).toPrecision(12));
	const digits = Math.abs(exact) < 1 ? 2 : 4;
	const step = exact === 0 ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(exact))) + 1 - digits);
	const steps = Number((exact / step).toPrecision(12));
	const text = numberText((side === 'least' ? Math.ceil(steps) : Math.floor(steps)) * step, digits);
	return withUnit(text, measure.unit);
}
