import { addingOrder } from '../laws/adding-order';
import { readableSplit } from '../laws/readable-split';
import { roundUpTo } from '../quantity/rounding';
import { weightRatio } from '../materials/mix-ratio';
import type { Sheet } from '../materials/sheet';

/** Greatest deviation of a weight ratio that may be mixed, where the sheet gives none; common practice, no source. */
const TOLERANCE_FRACTION = 0.02;
/** Share of the tolerance that rounding the targets may use up, so that the rest is the person's; common practice, no source. */
const ROUNDING_SHARE = 0.25;
const THINNEST_PAS = 1e-4;
const THICKEST_PAS = 1e5;

export interface SplitCup {
	massG: number;
	/** In pouring order: thicker part first, water before powder. */
	parts: { part: string; massG: number }[];
}

export const toleranceOf = (sheet: Sheet): number =>
	sheet.ratioToleranceFraction ?? TOLERANCE_FRACTION;

/** Shares of the parts by weight, in the sheet's order; they sum to 1. */
export function partFractions(sheet: Sheet): { part: string; fraction: number }[] {
	const ratio = weightRatio(sheet) ?? [];
	const total = ratio.reduce((sum, share) => sum + share, 0);
	return sheet.parts.map(({ part }, index) => ({ part, fraction: (ratio[index] ?? 0) / total }));
}

/**
 * One cup of at least `massG` in masses that the scale can show.
 *
 * @returns null when the scale is too coarse for the ratio's tolerance
 */
export function splitCup(sheet: Sheet, massG: number, readabilityG: number): SplitCup | null {
	const ratio = weightRatio(sheet);
	const [only] = sheet.parts;
	if (!ratio || !only) return null;
	if (sheet.parts.length === 1) {
		const roundedG = Math.max(readabilityG, roundUpTo(massG, readabilityG));
		return { massG: roundedG, parts: [{ part: only.part, massG: roundedG }] };
	}
	const tolerance = toleranceOf(sheet);
	const split =
		readableSplit({
			batchG: massG,
			parts: ratio,
			readabilityG,
			toleranceFraction: tolerance * ROUNDING_SHARE
		}) ??
		readableSplit({ batchG: massG, parts: ratio, readabilityG, toleranceFraction: tolerance });
	if (!split) return null;
	const weighed = sheet.parts.map((part, index) => ({ ...part, massG: split.massesG[index] ?? 0 }));
	return {
		massG: split.batchG,
		parts: inPouringOrder(sheet.family, weighed).map(({ part, massG: partG }) => ({
			part,
			massG: partG
		}))
	};
}

/** Whether a part of a mix is its water. */
const isWater = (part: string): boolean => part.trim().toLowerCase() === 'water';

/**
 * Water before the powder that is sifted into it, so that no dry lump is left below; of liquids the thicker
 * first. The sheet's own order when it does not give every viscosity.
 */
function inPouringOrder<P extends { part: string; viscosityPaS?: number | undefined }>(
	family: Sheet['family'],
	parts: readonly P[]
): P[] {
	const water = parts.filter(({ part }) => isWater(part));
	if ((family === 'plaster' || family === 'concrete') && water.length > 0) {
		return [...water, ...parts.filter(({ part }) => !isWater(part))];
	}
	if (parts.some(({ viscosityPaS }) => viscosityPaS === undefined)) return [...parts];
	return addingOrder(
		parts.map((part) => ({
			part,
			viscosityPaS: Math.min(THICKEST_PAS, Math.max(THINNEST_PAS, part.viscosityPaS ?? 1))
		}))
	).map(({ part }) => part);
}
