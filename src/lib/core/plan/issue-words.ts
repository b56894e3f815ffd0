import type { z } from 'zod';

type Issue = z.core.$ZodIssue;

/** Longest text that is quoted back whole; choice of the screen. */
const MOST_QUOTED = 40;
/** Most fields that are named of those nobody knows; choice of the screen. */
const MOST_KEYS = 5;

/**
 * A schema's objection in the words of a refusal: which field, what was given, what is accepted.
 *
 * @param given - the inputs that were refused, from which the refused value is quoted
 */
export function issueWords(issue: Issue, given: unknown): string {
	return `${fieldOf(issue.path)} ${objection(issue, valueAt(given, issue.path))}; accepted: ${accepted(issue)}.`;
}

/** The field's own name, and which entry of its list. */
function fieldOf(path: readonly PropertyKey[]): string {
	const from = path.findLastIndex((key) => typeof key === 'string');
	return from < 0 ? 'The whole' : path.slice(from).map(String).join('.');
}

function objection(issue: Issue, value: unknown): string {
	if (issue.code === 'unrecognized_keys')
		return `has ${issue.keys.slice(0, MOST_KEYS).map(quoted).join(', ')}`;
	if (value === undefined || value === '') return 'is missing';
	const isSize = issue.code === 'too_small' || issue.code === 'too_big';
	if (isSize && typeof value === 'string') return `has ${numberText(value.length)} characters`;
	if (isSize && Array.isArray(value)) return `has ${numberText(value.length)} entries`;
	return `is ${quoted(value)}`;
}

/** What a schema would have taken instead, without a word of what was given. */
export function accepted(issue: Issue): string {
	switch (issue.code) {
		case 'invalid_type':
			return TYPES[issue.expected] ?? issue.expected;
		case 'too_small':
		case 'too_big':
			return sizeAccepted(issue);
		case 'invalid_value':
			return list(issue.values);
		case 'invalid_union':
			return unionAccepted(issue);
		case 'unrecognized_keys':
			return 'only the fields that the API describes';
		case 'not_multiple_of':
			return `whole multiples of ${issue.divisor}`;
		default:
			return isOwn(issue.message) ? issue.message : (FORMATS[formatOf(issue)] ?? issue.message);
	}
}

const TYPES: Readonly<Record<string, string>> = {
	array: 'a list',
	boolean: 'true or false',
	int: 'a whole number',
	number: 'a number',
	object: 'an object with its fields',
	record: 'an object with its fields',
	string: 'a text'
};

const FORMATS: Readonly<Record<string, string>> = {
	datetime: 'an instant such as 2026-11-30T13:30:00Z',
	uuid: 'a UUID'
};

/** Whether the schema says it in words of its own; the library's begin with these. */
const isOwn = (message: string): boolean => !message.startsWith('Invalid ');

const formatOf = (issue: Issue): string => (issue.code === 'invalid_format' ? issue.format : '');

type SizeIssue = Extract<Issue, { code: 'too_small' | 'too_big' }>;

function sizeAccepted(issue: SizeIssue): string {
	const { code, origin, inclusive } = issue;
	const isSmall = code === 'too_small';
	const limit = numberText(Number(isSmall ? issue.minimum : issue.maximum));
	if (origin === 'string') return isSmall ? 'a text' : `up to ${limit} characters`;
	if (origin === 'array') return isSmall ? `${limit} or more` : `up to ${limit}`;
	if (inclusive === false) return `${isSmall ? 'more' : 'less'} than ${limit}`;
	return `${limit} or ${isSmall ? 'more' : 'less'}`;
}

/** What the branches of a choice would have taken, each once. */
function unionAccepted(issue: Extract<Issue, { code: 'invalid_union' }>): string {
	if ('options' in issue && Array.isArray(issue.options)) return list(issue.options);
	const branches = issue.errors.flatMap(([first]) => (first ? [accepted(first)] : []));
	return branches.length > 0 ? [...new Set(branches)].join(', or ') : 'another form';
}

/** Names of the trade may hold a comma. */
const list = (values: readonly unknown[]): string => values.map(String).join('; ');

/** With every digit that was given. */
const numberText = (value: number): string =>
	value.toLocaleString('en-US', { maximumFractionDigits: 20 });

function valueAt(given: unknown, path: readonly PropertyKey[]): unknown {
	let value = given;
	for (const key of path) {
		if (typeof value !== 'object' || value === null) return undefined;
		value = Reflect.get(value, key);
	}
	return value;
}

function quoted(value: unknown): string {
	if (typeof value === 'number') return numberText(value);
	if (Array.isArray(value)) return 'a list';
	if (typeof value === 'object' && value !== null) return 'an object';
	const text = String(value);
	return `“${text.length > MOST_QUOTED ? `${text.slice(0, MOST_QUOTED)}…` : text}”`;
}
