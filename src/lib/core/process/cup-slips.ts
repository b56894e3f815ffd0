import { roundToReadability } from '../quantity/rounding';
import type { CupAtScale } from './cup-advice';
import { isOnRatio } from './cup-check';

/** A reading that fits once its decimal point is moved one place: more likely typed wrong than poured. */
export interface DecimalSlip {
	part: string;
	massG: number;
	isTenth: boolean;
}

/**
 * The part that is on ratio with the others once its decimal point is moved; null when none is. Of two that could
 * be wrong, the one whose reading is farther from what was to be poured.
 */
export function decimalSlip(cup: CupAtScale, massesG: Record<string, number>): DecimalSlip | null {
	const found = cup.parts.flatMap(({ part, targetG }) =>
		[0.1, 10].flatMap((factor) => {
			const massG = roundToReadability((massesG[part] ?? 0) * factor, cup.readabilityG);
			if (!isOnRatio(cup, { ...massesG, [part]: massG })) return [];
			const off = Math.abs(Math.log(massG / targetG));
			return [{ slip: { part, massG, isTenth: factor < 1 }, off }];
		})
	);
	return found.toSorted((a, b) => a.off - b.off)[0]?.slip ?? null;
}

/**
 * What each part weighs by itself, when the readings are on ratio only as running totals of the cup: the
 * scale was not zeroed between the parts. Null when they are not.
 */
export function aloneOfTotals(
	cup: CupAtScale,
	massesG: Record<string, number>
): Record<string, number> | null {
	if (cup.parts.length < 2) return null;
	const read = cup.parts.map(({ part }) => massesG[part] ?? 0);
	const alone = read.map((totalG, i) =>
		roundToReadability(totalG - (read[i - 1] ?? 0), cup.readabilityG)
	);
	if (alone.some((massG) => massG <= 0)) return null;
	const found = Object.fromEntries(cup.parts.map(({ part }, i) => [part, alone[i] ?? 0]));
	return isOnRatio(cup, found) ? found : null;
}

/**
 * What the scale shows with `massG` of a part in, in grams, when it was zeroed with the empty cup only.
 * Parts before it count as they were weighed, those not yet weighed as planned.
 */
export function runningTotalG(
	cup: CupAtScale,
	massesG: Record<string, number>,
	{ part, massG }: { part: string; massG: number }
): number {
	const before = cup.parts.slice(
		0,
		cup.parts.findIndex((p) => p.part === part)
	);
	const beforeG = before.reduce((sum, p) => sum + (massesG[p.part] ?? p.targetG), 0);
	return roundToReadability(beforeG + massG, cup.readabilityG);
}
