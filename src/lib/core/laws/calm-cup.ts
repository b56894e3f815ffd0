import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { calibratedKPerS, peakMoment, type CuringMaterial } from './mass-effect';

export const calmCupLaw: Law = {
	id: 'calm-cup',
	name: 'Do not mix more than',
	formula: 'largest m, or thickness d of what is spread, with max T(t) ≤ T_limit',
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
	return largestCalm(isCalm, 1, limits.searchUpToG);
}

/** Thinnest and thickest spread that is looked at, mm; the limits of a coat's heat loss. */
const SPREAD_MM = { least: 0.05, most: 100 };

/**
 * How thick what is left may lie, in mm, so that its peak stays at or below a limit: a smear loses its heat
 * over far more area for its mass than a lump in a cup, which even small may pass it.
 *
 * @returns null when even the thinnest would pass the limit; 100 when nothing up to there does
 */
export function thickestCalmSpreadMm(
	material: CuringMaterial,
	temperatureC: number,
	peakC: number,
	kPerS = calibratedKPerS(material)
): number | null {
	assertWithin(peakC, temperatureC, 400, 'peakC');
	const isCalm = (thicknessMm: number) =>
		peakMoment(material, { kind: 'film', thicknessMm }, temperatureC, kPerS).temperatureC <= peakC;
	return largestCalm(isCalm, SPREAD_MM.least, SPREAD_MM.most);
}

/** The largest size that is calm, to half a percent, by halving. */
function largestCalm(
	isCalm: (size: number) => boolean,
	least: number,
	most: number
): number | null {
	if (!isCalm(least)) return null;
	if (isCalm(most)) return most;
	let calm = least;
	let hot = most;
	while (hot / calm > 1.005) {
		const middle = Math.sqrt(calm * hot);
		if (isCalm(middle)) calm = middle;
		else hot = middle;
	}
	return calm;
}
