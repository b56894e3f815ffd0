import type { UnitSystem } from '$lib/core/quantity/display';
import type { Pattern } from '$lib/core/geometry/pattern';
import { formTree } from '$lib/screen/form/form-tree';
import type { FieldErrors } from '$lib/screen/form/read-entries';
import {
	emptyPattern,
	newSolid,
	patternDraftSchema,
	withoutSolid,
	type PatternDraft
} from '$lib/screen/pattern/pattern-draft';
import { readPattern } from '$lib/screen/pattern/read-pattern';

export type PostedPattern =
	{ pattern: Pattern } | { pattern: null; draft: PatternDraft; errors: FieldErrors | undefined };

/** What a posted form says: a pattern to save, or the draft to show again with what is wrong in it. */
export function postedPattern(form: FormData, system: UnitSystem): PostedPattern {
	const parsed = patternDraftSchema.safeParse(formTree(form));
	if (!parsed.success) {
		const errors = { body: 'The form could not be read; it is shown blank.' };
		return { pattern: null, draft: emptyPattern(), errors };
	}
	const draft = parsed.data;
	const change = String(form.get('change') ?? '');
	if (change) return { pattern: null, draft: changed(draft, change), errors: undefined };
	const { pattern, errors } = readPattern(draft, system);
	return pattern ? { pattern } : { pattern: null, draft, errors };
}

/** Adding and removing a solid where no script runs: the form comes back with one more or less. */
function changed(draft: PatternDraft, change: string): PatternDraft {
	const { solids } = draft.body;
	const gone = solids.find(({ id }) => change === `remove ${id}`);
	const next = gone ? withoutSolid(solids, gone) : [...solids, newSolid(solids)].slice(0, 60);
	return { ...draft, body: { ...draft.body, solids: next } };
}
