import { z } from 'zod';
import { withPoint } from '../language/local-digits';
import type { Locale } from '../language/locale';
import { eventSchema, type EventType } from '../process/events';

const NUMBER = /^[+-]?\d+(\.\d+)?$/;
/** Filled in by the server, never by a form. */
const OWN = ['type', 'at', 'by'];

/** Whether this is the name of an act. */
export function isEventType(name: string): name is EventType {
	return shapeOf(name) !== undefined;
}

/**
 * The data of an act from the fields of a form, typed as the act's own schema has them: numbers from
 * text, `massesG.A` into a record, `points[0].place` into a list. What cannot be read stays in a form
 * that the schema refuses by name.
 */
export function eventFromForm(
	type: EventType,
	form: FormData,
	locale: Locale = 'en-US'
): Record<string, unknown> {
	const sent: Sent = { form, locale };
	const shape = shapeOf(type) ?? {};
	const entries = Object.entries(shape)
		.filter(([key]) => !OWN.includes(key))
		.map(([key, schema]) => [key, read(schema, key, sent)] as const)
		.filter(([, value]) => value !== undefined);
	return { type, ...Object.fromEntries(entries) };
}

interface Sent {
	form: FormData;
	/** How whoever filled it in writes numbers. */
	locale: Locale;
}

function shapeOf(type: string): z.core.$ZodLooseShape | undefined {
	return eventSchema.options.find(({ shape }) => shape.type.value === type)?.shape;
}

function read(schema: unknown, name: string, sent: Sent): unknown {
	const { form, locale } = sent;
	if (schema instanceof z.ZodOptional) {
		const inner: unknown = schema.unwrap();
		if (inner instanceof z.ZodArray) {
			const items = readList(inner, name, sent);
			return items.length > 0 ? items : undefined;
		}
		if (inner instanceof z.ZodRecord) {
			const record = readRecord(inner, name, sent);
			return Object.keys(record).length > 0 ? record : undefined;
		}
		return textOf(form, name) === '' ? undefined : read(inner, name, sent);
	}
	if (schema instanceof z.ZodArray) return readList(schema, name, sent);
	if (schema instanceof z.ZodRecord) return readRecord(schema, name, sent);
	if (schema instanceof z.ZodNumber) return numberOf(withPoint(textOf(form, name), locale));
	if (schema instanceof z.ZodBoolean || schema instanceof z.ZodLiteral) return truthOf(form, name);
	return textOf(form, name);
}

function readList(schema: z.ZodArray, name: string, sent: Sent): unknown[] {
	const { form } = sent;
	const { element } = schema;
	if (!(element instanceof z.ZodObject)) {
		return form.getAll(name).filter((value) => typeof value === 'string' && value !== '');
	}
	return filledRows(form, name)
		.map((row) => `${name}[${row}]`)
		.map((prefix) =>
			Object.fromEntries(
				Object.entries(element.shape).map(([key, field]) => [
					key,
					read(field, `${prefix}.${key}`, sent)
				])
			)
		);
}

/**
 * The rows of a list that a person filled in, by their numbers in the form: empty ones count as not
 * there, and so does a key dimension that was offered and not measured.
 */
export function filledRows(form: FormData, name: string): number[] {
	const cells = [...form.keys()].flatMap((key) => {
		const found = key.startsWith(`${name}[`)
			? /^\[(\d+)\]\.(\w+)$/.exec(key.slice(name.length))
			: null;
		return found?.[1] === undefined ? [] : [{ row: Number(found[1]), column: found[2], key }];
	});
	const rows = [...new Set(cells.map(({ row }) => row))].sort((a, b) => a - b);
	return rows.filter((row) => {
		const own = cells.filter((cell) => cell.row === row);
		const measured = own.find(({ column }) => column === 'measuredMm');
		return (measured ? [measured] : own).some(({ key }) => textOf(form, key) !== '');
	});
}

function readRecord(schema: z.ZodRecord, name: string, sent: Sent): Record<string, unknown> {
	const { form } = sent;
	const keys = [...new Set(form.keys())].filter((key) => key.startsWith(`${name}.`));
	return Object.fromEntries(
		keys.map((key) => [key.slice(name.length + 1), read(schema.valueType, key, sent)])
	);
}

function truthOf(form: FormData, name: string): boolean {
	return ['true', 'on'].includes(textOf(form, name));
}

function numberOf(text: string): number {
	return NUMBER.test(text) ? Number(text) : Number.NaN;
}

function textOf(form: FormData, name: string): string {
	const value = form.get(name);
	return typeof value === 'string' ? value.trim() : '';
}
