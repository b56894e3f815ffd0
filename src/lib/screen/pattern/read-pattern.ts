import { bodySchema, patternSchema, type Body, type Pattern } from '$lib/core/geometry/pattern';
import { bodyProblems } from '$lib/core/geometry/solids';
import type { UnitSystem } from '$lib/core/quantity/display';
import { issueErrors } from '../form/issue-errors';
import { readEntries, type FieldErrors } from '../form/read-entries';
import type { PatternDraft, SolidDraft } from './pattern-draft';
import { PATTERN_NUMBERS } from './pattern-numbers';
import { sizesOf } from './shape-fields';

export interface PatternRead {
	/** Null while something is wrong anywhere. */
	pattern: Pattern | null;
	/** Its shape, also when name or detail are not yet filled in. */
	body: Body | null;
	errors: FieldErrors;
	/** What can be lived with, by field. */
	notes: FieldErrors;
}

/** The pattern that a form describes, or what is wrong with it, by field, in the shop's units. */
export function readPattern(draft: PatternDraft, system: UnitSystem): PatternRead {
	const context = { fields: PATTERN_NUMBERS, system, draft };
	const asked = { ...draft, body: askedBody(draft.body) };
	const { value, errors: unreadable } = readEntries(asked, PATTERN_NUMBERS, system);
	const candidate = { detail: {}, ...Object(value) };
	const parsed = patternSchema.safeParse(candidate);
	const body = bodySchema.safeParse(candidate.body);
	const errors = {
		...(parsed.success ? {} : issueErrors(parsed.error, context)),
		...unreadable
	};
	const notes: FieldErrors = {};
	const problems = body.success ? bodyProblems(body.data) : [];
	for (const { path, message, severity } of problems) {
		const said = named(message, draft.body.solids);
		(severity === 'refuse' ? errors : notes)[`body.${path}`] ??= said;
	}
	const isComputable = body.success && problems.every(({ severity }) => severity === 'note');
	return {
		pattern: parsed.success && Object.keys(errors).length === 0 ? parsed.data : null,
		body: isComputable ? body.data : null,
		errors,
		notes
	};
}

/** Only what is asked for: the other kind of body and the other shapes' sizes stay out of it. */
function askedBody(body: PatternDraft['body']): object {
	const { kind, solids, ...measured } = body;
	return kind === 'measured' ? { kind, ...measured } : { kind, solids: solids.map(askedSolid) };
}

function askedSolid(draft: SolidDraft): object {
	const { shape, id, name, on, against } = draft;
	const sizes = Object.fromEntries(sizesOf(shape).map(({ key }) => [key, draft[key]]));
	const cone = shape === 'cone' ? { shape: 'frustum', topDiameterMm: '0' } : { shape };
	return { ...cone, id, name, on, ...sizes, against };
}

/** The core speaks of solids by id; a person gave them names. */
function named(message: string, solids: readonly SolidDraft[]): string {
	return solids.reduce(
		(text, { id, name }) => text.replaceAll(`"${id}"`, `“${name.slice(0, 60)}”`),
		message.replaceAll('"board"', 'the board')
	);
}
