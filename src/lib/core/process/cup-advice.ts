import { correction, cupFill } from '../laws/correction';
import { cupDeviationFraction, isOnRatio } from './cup-check';
import { aloneOfTotals, decimalSlip, type DecimalSlip } from './cup-slips';
import { roundToReadability } from '../quantity/rounding';

/** What the bench knows of the cup that is being weighed. */
export interface CupAtScale {
	number: number;
	of: number;
	resplit: boolean;
	materialName: string;
	cupVolumeMl: number;
	/** The largest of the shop. */
	largestCupMl: number;
	/** In pouring order, thicker part first. */
	parts: Array<{ part: string; targetG: number; densityGPerMl: number | null }>;
	fractions: Array<{ part: string; fraction: number }>;
	toleranceFraction: number;
	readabilityG: number;
	/** What was entered for this cup before, when it was weighed already. */
	weighedG: Record<string, number> | null;
	lots: Record<string, string>;
}

export interface CupAdvice {
	state: 'empty' | 'partial' | 'on ratio' | 'off ratio';
	/** Off its ratio, 0 is exact; null while a part is missing. */
	deviationFraction: number | null;
	/** What to pour now, rounded to the scale: the rest of the cup, or the correction. */
	add: Array<{ part: string; addG: number; totalG: number }>;
	/** The cup after that, in grams. */
	thenG: number;
	/** A mass that fits when its decimal point is moved one place: more likely typed wrong than poured. */
	slip: DecimalSlip | null;
	/** Each part by itself, when what was typed fits as running totals only: the scale was not zeroed between. */
	alone: Record<string, number> | null;
	/** Correcting it would make it more than twice the planned cup: a clean one wastes less. */
	doubles: boolean;
	/** Whether the scale is fine enough to bring it back on ratio. */
	reachable: boolean;
	/** Whether the cup still holds it with room to stir; null when densities are not known. */
	holds: boolean | null;
	/** Not even the largest cup of the shop does. */
	isTooMuch: boolean;
}

/**
 * What to do about the cup on the scale, from what was typed so far.
 *
 * @param massesG - by part; a part that is missing or not above 0 counts as not yet poured
 */
export function cupAdvice(cup: CupAtScale, massesG: Record<string, number>): CupAdvice {
	const { fractions, readabilityG } = cup;
	const actual = (part: string) => Math.max(0, massesG[part] ?? 0);
	const totalG = fractions.reduce((sum, { part }) => sum + actual(part), 0);
	const idle = { add: [], thenG: totalG, reachable: true, slip: null, alone: null, doubles: false };
	if (totalG <= 0) {
		return { state: 'empty', deviationFraction: null, ...idle, holds: null, isTooMuch: false };
	}

	const deviationFraction = cupDeviationFraction(cup, massesG);
	const held = (masses: Record<string, number>) => ({
		holds: holdsIt(cup, masses, cup.cupVolumeMl),
		isTooMuch: holdsIt(cup, masses, cup.largestCupMl) === false
	});
	if (isOnRatio(cup, massesG)) {
		return { state: 'on ratio', deviationFraction, ...idle, ...held(massesG) };
	}
	const fix = correction({
		actualG: fractions.map(({ part }) => actual(part)),
		parts: fractions.map(({ fraction }) => fraction)
	});
	const add = fractions
		.map(({ part }, i) => {
			const addG = roundToReadability(fix.addG[i] ?? 0, readabilityG);
			return { part, addG, totalG: roundToReadability(actual(part) + addG, readabilityG) };
		})
		.filter(({ addG }) => addG > 0);
	const then = Object.fromEntries(
		fractions.map(({ part }) => [part, add.find((a) => a.part === part)?.totalG ?? actual(part)])
	);
	const thenG = Object.values(then).reduce((sum, mass) => sum + mass, 0);
	const plannedG = cup.parts.reduce((sum, { targetG }) => sum + targetG, 0);
	return {
		slip: deviationFraction === null ? null : decimalSlip(cup, massesG),
		alone: deviationFraction === null ? null : aloneOfTotals(cup, massesG),
		doubles: deviationFraction !== null && thenG > 2 * plannedG,
		state: deviationFraction === null ? 'partial' : 'off ratio',
		deviationFraction,
		add,
		thenG,
		reachable: isOnRatio(cup, then),
		...held(then)
	};
}

function holdsIt(
	cup: CupAtScale,
	massesG: Record<string, number>,
	cupVolumeMl: number
): boolean | null {
	const densities = cup.parts.map(({ densityGPerMl }) => densityGPerMl ?? Number.NaN);
	if (densities.some(Number.isNaN)) return null;
	return cupFill({
		massesG: cup.parts.map(({ part }) => massesG[part] ?? 0),
		densitiesGPerMl: densities,
		cupVolumeMl
	}).holds;
}
