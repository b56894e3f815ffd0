import { coatThicknessesMm } from '../laws/coat-profile';
import { roundTo } from '../quantity/rounding';

/** Largest side of a pattern up to which a glove of this thickness keeps its shape. */
const THICKNESS_BY_SIZE: readonly [largestMm: number, thicknessMm: number][] = [
	[200, 6],
	[400, 8],
	[800, 10],
	[Infinity, 12]
];
/** A choice; a person can ask for fewer, but not for more. */
const MOST_COATS = 12;
/** The last of an evenly rising series that starts at 0.6 of the mean is 1.4 of it; exact. */
const LAST_SHARE = 1.4;
export const COAT_STEP_MM = 0.1;

/** Thickness of a glove for a pattern of this largest side, mm; common practice, no source. */
export function usualGloveMm(largestMm: number): number {
	return THICKNESS_BY_SIZE.find(([upTo]) => largestMm <= upTo)?.[1] ?? 12;
}

export interface CoatSeries {
	/** Thickness of each coat in the order in which they go on, mm. */
	coatsMm: number[];
	/** Set when the last coat is thicker than what stays on the wall. */
	tooThick: { lastMm: number; neededCoats: number | null } | null;
}

/**
 * The build coats that make up `totalMm`, thin first.
 *
 * @param limitMm - thickest coat that stays on the steepest wall; Infinity when nobody can tell
 * @param asked - how many, when a person asked for a number
 */
export function buildCoatSeries(totalMm: number, limitMm: number, asked?: number): CoatSeries {
	const usual = totalMm <= 8 ? 3 : Math.max(4, Math.ceil(totalMm / 3));
	const holding = Math.ceil((LAST_SHARE * totalMm) / limitMm - 1e-9);
	const coats = asked ?? Math.min(MOST_COATS, Math.max(usual, holding));
	const exact = coatThicknessesMm({ targetMm: totalMm, coats });
	const rounded = exact.map((mm) => Math.max(COAT_STEP_MM, roundTo(mm, COAT_STEP_MM)));
	const beforeMm = rounded.slice(0, -1).reduce((sum, mm) => sum + mm, 0);
	return {
		coatsMm: [...rounded.slice(0, -1), roundTo(totalMm - beforeMm, COAT_STEP_MM / 10)],
		tooThick:
			holding > coats
				? {
						lastMm: (LAST_SHARE * totalMm) / coats,
						neededCoats: holding > MOST_COATS ? null : holding
					}
				: null
	};
}
