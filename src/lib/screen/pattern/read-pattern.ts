import { withCustomary } from '$lib/core/quantity/with-customary';
import { bodySchema, patternSchema, type Body, type Pattern } from '$lib/core/geometry/pattern';
import { bodyProblems } from '$lib/core/geometry/solids';
import type { UnitSystem } from '$lib/core/quantity/display';
import { issueErrors } from '../form/issue-errors';
import { readEntries, type FieldErrors } from '../form/read-entries';
import type { PatternDraft, SolidDraft } from './pattern-draft';
import { PATTERN_NUMBERS } from './pattern-numbers';
import { sizesOf } from './shape-fields';

/** What a pattern may have; the schema's own. */
const MOST_UNDERCUT_MM = 1000;

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
	const mesh = draft.body.kind === 'mesh' ? meshOf(draft.body.mesh) : null;
	const asked = { ...draft, body: mesh ? {} : askedBody(draft.body) };
	const { value, errors: unreadable } = readEntries(asked, PATTERN_NUMBERS, system);
	const candidate = {
		detail: {},
		...Object(value),
		...(mesh && { body: mesh, ...undercutOf(mesh) })
	};
	const parsed = patternSchema.safeParse(candidate);
	const body = bodySchema.safeParse(candidate.body);
	const errors = {
		...(parsed.success ? {} : issueErrors(parsed.error, context)),
		...unreadable
	};
	const notes: FieldErrors = {};
	const problems = body.success ? bodyProblems(body.data) : [];
	for (const { path, message, severity } of problems) {
		const said = withCustomary(named(message, draft.body.solids), system);
		(severity === 'refuse' ? errors : notes)[`body.${path}`] ??= said;
	}
	if (mesh) gatherUnderMesh(errors);
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
	if (body.kind !== 'measured') return { kind: body.kind, solids: body.solids.map(askedSolid) };
	const { exposedAreaCm2, volumeMl, lengthMm, widthMm, heightMm, steepestWallDeg } = body;
	const sizes = { lengthMm, widthMm, heightMm, steepestWallDeg };
	return { kind: body.kind, exposedAreaCm2, volumeMl, ...sizes };
}

/** What a mesh's hidden field holds; without it there is no shape yet. */
function meshOf(json: string): object {
	try {
		return { kind: 'mesh', ...Object(JSON.parse(json)) };
	} catch {
		return { kind: 'mesh' };
	}
}

/** Where the mesh was looked at for undercuts, nobody types one. */
function undercutOf(mesh: object): { undercutMm?: number } {
	const parsed = bodySchema.safeParse(mesh);
	if (!parsed.success || parsed.data.kind !== 'mesh' || !parsed.data.handling) return {};
	const { depthMm } = parsed.data.handling.undercut;
	return { undercutMm: Math.min(MOST_UNDERCUT_MM, Math.round(depthMm * 10) / 10) };
}

/** A mesh has no fields of its own on the form: whatever is wrong with it is said at one place. */
function gatherUnderMesh(errors: FieldErrors): void {
	for (const path of Object.keys(errors)) {
		if (!path.startsWith('body')) continue;
		const text = errors[path] ?? '';
		delete errors[path];
		errors['body.mesh'] ??= text.startsWith('Nothing is entered')
			? 'Nothing is measured yet: open a file and wait until its numbers are there.'
			: `${path.replace('body.', '')}: ${text}`;
	}
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
