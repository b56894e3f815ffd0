import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

/** `cylinder`: round upright wall; `dome`: part of a sphere. */
export type CurvedForm = 'cylinder' | 'dome';

export const curvedShellLaw: Law = {
	id: 'curved-shell',
	name: 'Stress and growth of a round shell under the head of the casting',
	formula:
		'σ = p · r / (k · t), Δr = c · p · r² / (E · t); cylinder k 1, c 1; dome k 2, c (1 − ν) / 2',
	source: 'Membrane theory of thin shells, any text of strength of materials; ν = 0.3',
	validity:
		'Closed round wall, thickness below a tenth of the radius; a split shell is a flat wall.'
};

/** Poisson’s ratio of a stiff resin or laminate; common practice, no source. */
const POISSON = 0.3;
const FORMS: Readonly<Record<CurvedForm, { stress: number; growth: number }>> = {
	cylinder: { stress: 1, growth: 1 },
	dome: { stress: 1 / 2, growth: (1 - POISSON) / 2 }
};

/**
 * Hoop stress and growth of the radius of a closed round shell.
 *
 * @throws RangeError for impossible input, and for a wall thicker than a tenth of its radius
 */
export function curvedShell({
	form,
	pressurePa,
	radiusMm,
	thicknessMm,
	modulusPa
}: {
	form: CurvedForm;
	pressurePa: number;
	radiusMm: number;
	thicknessMm: number;
	modulusPa: number;
}): { stressPa: number; growthMm: number } {
	assertWithin(pressurePa, 0, 1e6, 'pressurePa');
	assertWithin(radiusMm, 1, 10_000, 'radiusMm');
	assertWithin(thicknessMm, 0.1, radiusMm / 10, 'thicknessMm');
	assertWithin(modulusPa, 1e6, 1e12, 'modulusPa');
	const { stress, growth } = FORMS[form];
	return {
		stressPa: (stress * pressurePa * radiusMm) / thicknessMm,
		growthMm: (growth * pressurePa * radiusMm ** 2) / (modulusPa * thicknessMm)
	};
}
