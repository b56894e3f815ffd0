import type { z } from 'zod';
import type { UnitSystem } from '$lib/core/quantity/display';
import {
	acceptedNumber,
	limitText,
	measureAt,
	quoted,
	type FieldErrors,
	type NumberFields
} from './read-entries';

interface Context {
	fields: NumberFields;
	system: UnitSystem;
	/** What stands in the form, to be quoted. */
	draft: unknown;
}

/** A schema's objections as sentences under the fields they belong to: what stands there, what would be accepted. */
export function issueErrors(error: z.ZodError, context: Context): FieldErrors {
	const errors: FieldErrors = {};
	for (const issue of error.issues) {
		const path = issue.path.map(String).join('.');
		errors[path] ??= sentence(issue, path, context);
	}
	return errors;
}

function sentence(issue: z.core.$ZodIssue, path: string, { fields, system, draft }: Context) {
	const measure = measureAt(path, fields, system);
	const typed = typedAt(draft, path);
	const shown = typed === '' ? 'Nothing is entered' : `${quoted(typed)} is not accepted`;
	switch (issue.code) {
		case 'invalid_type':
			if (measure) {
				const isWhole = measure.isWhole || issue.expected === 'int';
				return `${shown}; accepted: ${acceptedNumber(measure, isWhole)}.`;
			}
			return typed === '' ? 'Nothing is entered; it is needed.' : `${shown}.`;
		case 'too_small':
		case 'too_big':
			return `${size(issue, typed)}; accepted: ${limit(issue, measure)}.`;
		case 'invalid_value':
			return `${shown}; accepted: ${issue.values.map(String).join(', ')}.`;
		case 'invalid_format':
		case 'custom':
			return `${shown}; accepted: ${issue.message.replace(/^Invalid.*$/, 'another form')}.`;
		default:
			return `${shown}.`;
	}
}

type SizeIssue = Extract<z.core.$ZodIssue, { code: 'too_small' | 'too_big' }>;

function size(issue: SizeIssue, typed: string): string {
	const isSmall = issue.code === 'too_small';
	if (issue.origin === 'string')
		return isSmall
			? 'Nothing is entered'
			: `${typed.length.toLocaleString('en-US')} characters are too many`;
	if (issue.origin === 'array')
		return isSmall ? 'There are too few rows' : 'There are too many rows';
	return `${quoted(typed)} is too ${isSmall ? 'small' : 'large'}`;
}

function limit(issue: SizeIssue, measure: ReturnType<typeof measureAt>): string {
	const value = Number(issue.code === 'too_small' ? issue.minimum : issue.maximum);
	if (issue.origin === 'string')
		return `${issue.code === 'too_small' ? 'at least' : 'up to'} ${value} characters`;
	if (issue.origin === 'array')
		return `${value} ${issue.code === 'too_small' ? 'or more' : 'at most'}`;
	const text = limitText(value, measure, issue.code === 'too_small' ? 'least' : 'most');
	if (issue.code === 'too_small')
		return issue.inclusive === false ? `more than ${text}` : `${text} or more`;
	return `${text} or less`;
}

function typedAt(draft: unknown, path: string): string {
	let node = draft;
	for (const key of path.split('.')) {
		if (typeof node !== 'object' || node === null) return '';
		node = Reflect.get(node, key);
	}
	return typeof node === 'string' ? node.trim() : '';
}
