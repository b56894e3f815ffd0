import { GRAVITY_M_PER_S2 } from '../laws/sag';
import type { Law } from '../quantity/figure';

export const coatReachLaw: Law = {
	id: 'coat-reach',
	name: 'Radius by which a first coat rounds off a recess',
	formula: 'r = min(t, τ_y / (ρ · g))',
	source:
		'slump into a slot: weight ρ·g·w against 2·τ_y at its walls (plain statics); to take the lesser of the two is common practice, no source',
	validity: 'the first coat on the pattern, brushed once; without a yield stress r = t'
};

export interface FirstCoat {
	/** Wet thickness as brushed. */
	wetMm: number;
	yieldPa: number;
	densityGPerMl: number;
}

/**
 * Radius by which a first coat rounds off what it should wet, mm: the ball that stands for the coat
 * cannot enter where it does not fit, and air stays there.
 *
 * A coat is no stiffer than its thickness; and material that yields slumps into a slot as soon as its
 * weight overcomes what clings to both walls, ρ·g·w = 2·τ, which gives the radius w / 2 = τ / (ρ·g).
 * The balance is plain statics; to take the lesser of the two is common practice, no source.
 *
 * @throws RangeError unless thickness and density are above 0 and the yield stress is 0 or more
 */
export function coatReachMm({ wetMm, yieldPa, densityGPerMl }: FirstCoat): number {
	if (!(wetMm > 0 && densityGPerMl > 0 && yieldPa >= 0)) {
		throw new RangeError(
			`a coat of ${wetMm} mm, ${densityGPerMl} g/mL, ${yieldPa} Pa; accepted: thickness and density above 0, yield stress 0 or more`
		);
	}
	return Math.min(wetMm, yieldPa / (densityGPerMl * GRAVITY_M_PER_S2));
}
