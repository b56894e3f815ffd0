import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { DENSITY_G_PER_ML } from '../quantity/limits';
import { GRAVITY_M_PER_S2, largestHoldingMm } from './sag';

export const sagFlowLaw: Law = {
	id: 'sag-flow',
	name: 'How fast a coat above the limit runs',
	formula: 'u = n/(n+1) · (ρ·g·sin θ / K)^(1/n) · (h − h_0)^(1+1/n)',
	source: 'Herschel–Bulkley film on an incline, integrated; n = 1 is the Bingham film (derived)',
	validity: 'steady, thin, laminar; index n 0.2 to 1, consistency 0.01 to 10,000 Pa·sⁿ'
};

/**
 * Speed at which the outer plug of a coat slides down, in mm/s; 0 at or below the sag limit.
 *
 * @throws RangeError for a material or thickness out of range
 */
export function sagSpeedMmPerS(given: {
	thicknessMm: number;
	yieldStressPa: number;
	/** Consistency K in Pa·sⁿ; the plastic viscosity in Pa·s when the index is 1. */
	consistencyPaSn: number;
	flowIndex: number;
	densityGPerMl: number;
	slopeDeg: number;
}): number {
	const { thicknessMm, consistencyPaSn: K, flowIndex: n, densityGPerMl, slopeDeg } = given;
	assertWithin(thicknessMm, 0, 100, 'thicknessMm');
	assertWithin(K, 0.01, 10_000, 'consistencyPaSn');
	assertWithin(n, 0.2, 1, 'flowIndex');
	assertWithin(densityGPerMl, DENSITY_G_PER_ML.min, DENSITY_G_PER_ML.max, 'densityGPerMl');

	const overM = (thicknessMm - largestHoldingMm(given)) / 1000;
	if (overM <= 0) return 0;
	const pull = densityGPerMl * 1000 * GRAVITY_M_PER_S2 * Math.sin((slopeDeg * Math.PI) / 180);
	return 1000 * (n / (n + 1)) * (pull / K) ** (1 / n) * overM ** (1 + 1 / n);
}
