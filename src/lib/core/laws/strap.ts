import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { STANDARD_GRAVITY_M_PER_S2 } from './head';

/** Share added for shock, wet webbing and uneven pull; common practice, no source. */
export const STRAP_SAFETY_FACTOR = 2;

export const strapForceLaw: Law = {
	id: 'strap-force',
	name: 'Tension in each hold-down strap',
	formula: 'T = s · (F − m · g) / (2 · n · cos θ)',
	source: 'Static equilibrium; safety factor s = 2 is common practice, no source',
	validity:
		'Straps run right round (two legs each), share the load evenly, legs 0 to 60° off plumb.'
};

/**
 * Tension that each of `straps` straps must carry so that `upliftN` can't lift the lid, newtons;
 * 0 when the lid's own weight holds it down.
 *
 * @param legAngleDeg - how far the legs lean from plumb, 0 to 60
 * @throws RangeError for impossible input; straps must be a whole number
 */
export function strapForceN({
	upliftN,
	lidMassG,
	straps,
	legAngleDeg = 0,
	safetyFactor = STRAP_SAFETY_FACTOR
}: {
	upliftN: number;
	lidMassG: number;
	straps: number;
	legAngleDeg?: number;
	safetyFactor?: number;
}): number {
	assertWithin(upliftN, 0, 1e6, 'upliftN');
	assertWithin(lidMassG, 0, 1e8, 'lidMassG');
	assertWithin(straps, 1, 100, 'straps');
	if (!Number.isInteger(straps)) {
		throw new RangeError(`straps is ${straps}; accepted: a whole number from 1 to 100`);
	}
	assertWithin(legAngleDeg, 0, 60, 'legAngleDeg');
	assertWithin(safetyFactor, 1, 10, 'safetyFactor');
	const heldN = (lidMassG / 1000) * STANDARD_GRAVITY_M_PER_S2;
	const restN = Math.max(0, upliftN - heldN);
	return (safetyFactor * restN) / (2 * straps * Math.cos((legAngleDeg * Math.PI) / 180));
}
