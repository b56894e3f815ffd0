import { z } from 'zod';
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
export function eventFromForm(type: EventType, form: FormData): Record<string, unknown> {
	const shape = shapeOf(type) ?? {};
	const entries = Object.entries(shape)
		.filter(([key]) => !OWN.includes(key))
		.map(([key, schema]) => [key, read(schema, key, form)] as const)
		.filter(([, value]) => value !== undefined);
	return { type, ...Object.fromEntries(entries) };
}

function shapeOf(type: string): z.core.$ZodLooseShape | undefined {
	return eventSchema.options.find(({ shape }) => shape.type.value === type)?.shape;
}

function read(schema: unknown, name: string, form: FormData): unknown {
	if (schema instanceof z.ZodOptional) {
		const inner: unknown = schema.unwrap();
		if (inner instanceof z.ZodArray) {
			const items = readList(inner, name, form);
			return items.length > 0 ? items : undefined;
		}
		if (inner instanceof z.ZodRecord) {
			const record = readRecord(inner, name, form);
			return Object.keys(record).length > 0 ? record : undefined;
		}
		return textOf(form, name) === '' ? undefined : read(inner, name, form);
	}
	if (schema instanceof z.ZodArray) return readList(schema, name, form);
	if (schema instanceof z.ZodRecord) return readRecord(schema, name, form);
	if (schema instanceof z.ZodNumber) return numberOf(textOf(form, name));
	if (schema instanceof z.ZodBoolean || schema instanceof z.ZodLiteral) return truthOf(form, name);
	return textOf(form, name);
}

function readList(schema: z.ZodArray, name: string, form: FormData): unknown[] {
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
					read(field, `${prefix}.${key}`, form)
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

function readRecord(schema: z.ZodRecord, name: string, form: FormData): Record<string, unknown> {
	const keys = [...new Set(form.keys())].filter((key) => key.startsWith(`${name}.`));
	return Object.fromEntries(
		keys.map((key) => [key.slice(name.length + 1), read(schema.valueType, key, form)])
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
