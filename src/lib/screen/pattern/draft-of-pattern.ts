import type { Pattern, Solid } from '$lib/core/geometry/pattern';
import type { UnitSystem } from '$lib/core/quantity/display';
import { fieldTexts } from '../form/field-texts';
import { patternDraftSchema, type PatternDraft } from './pattern-draft';
import { PATTERN_NUMBERS } from './pattern-numbers';

/** A saved pattern as it stands in the form, in the shop's units. */
export function draftOfPattern(pattern: Pattern, system: UnitSystem): PatternDraft {
	const { body } = pattern;
	if (body.kind === 'mesh') {
		const texts = Object(fieldTexts({ ...pattern, body: {} }, PATTERN_NUMBERS, system)) as object;
		return patternDraftSchema.parse({
			...texts,
			body: { kind: 'mesh', mesh: JSON.stringify(body) }
		});
	}
	const shown = body.kind === 'solids' ? { ...body, solids: body.solids.map(withCone) } : body;
	return patternDraftSchema.parse(fieldTexts({ ...pattern, body: shown }, PATTERN_NUMBERS, system));
}

function withCone(solid: Solid): object {
	return solid.shape === 'frustum' && solid.topDiameterMm === 0
		? { ...solid, shape: 'cone' }
		: solid;
}
