import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { calibratedKPerS, peakMoment, type CuringMaterial } from './mass-effect';

export const calmCupLaw: Law = {
	id: 'calm-cup',
	name: 'Do not mix more than',
	formula: 'largest m with max T(t; m) ≤ T_limit',
	source: 'follows from the heat balance (search by halving)',
	validity:
		'an estimate on the low side of the temperature: stay well below it, and set a warming cup down in moving air, away from people'
};

/** Heaviest cup that a plan looks at; numerical choice. */
export const CALM_SEARCHED_G = 20_000;

/**
 * "Do not mix more than": the largest cup, in grams, whose peak stays at or below a limit when it is
 * forgotten at this temperature.
 *
 * @param limits - `peakC` above the room's temperature; `searchUpToG` 1 g to 100 kg
 * @returns null when even 1 g would pass the limit; `searchUpToG` when nothing up to there does
 */
export function largestCalmCupG(
	material: CuringMaterial,
	temperatureC: number,
	limits: { peakC: number; searchUpToG: number },
	kPerS = calibratedKPerS(material)
): number | null {
	assertWithin(limits.peakC, temperatureC, 400, 'peakC');
	assertWithin(limits.searchUpToG, 1, 100_000, 'searchUpToG');
	const isCalm = (massG: number) =>
		peakMoment(material, { kind: 'cup', massG }, temperatureC, kPerS).temperatureC <= limits.peakC;
	if (!isCalm(1)) return null;
	if (isCalm(limits.searchUpToG)) return limits.searchUpToG;

	let calmG = 1;
	let hotG = limits.searchUpToG;
	while (hotG / calmG > 1.005) {
		const middleG = Math.sqrt(calmG * hotG);
		if (isCalm(middleG)) calmG = middleG;
		else hotG = middleG;
	}
	return calmG;
}
