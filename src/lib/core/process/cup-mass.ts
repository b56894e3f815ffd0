import type { Coat, Plan, ShellRound } from '../plan/plan';
import type { Sheet } from '../materials/sheet';
import { batchAtWork, type ProcessContext } from './context';

type Batch = Coat | ShellRound;

/** A cup of this much more than planned is asked about, and noted once it is mixed; common practice, no source. */
const MUCH_MORE_FRACTION = 0.25;

/** What is in a cup, g. */
export function massInCup(massesG: Record<string, number>): number {
	return Object.values(massesG).reduce((sum, massG) => sum + massG, 0);
}

/** Whether a cup is so much heavier than planned that its pot life and its heat are others. */
export function isMuchLarger(massG: number, plannedG: number): boolean {
	return massG > (1 + MUCH_MORE_FRACTION) * plannedG;
}

/** How long a cup of this mass works after mixing, s, and how hot it gets when it is forgotten, °C. */
export interface CupLife {
	workingS: number;
	/** Null where the plan gives no heat. */
	peakC: number | null;
}

/**
 * The life of a cup by what is in it: as planned up to the plan's own cup, and beyond it by the plan's table,
 * read over the logarithm of the mass. A cup heavier than the table counts as its last row.
 */
export function cupLife({ workingS, cupLives = [] }: Batch, massG: number): CupLife {
	const above = cupLives.findIndex((row) => row.massG >= massG);
	const [from, to] = [cupLives[above - 1], cupLives[above]];
	if (from && to) {
		const share = Math.log(massG / from.massG) / Math.log(to.massG / from.massG);
		return {
			workingS: Math.floor(from.workingS + share * (to.workingS - from.workingS)),
			peakC: from.peakC + share * (to.peakC - from.peakC)
		};
	}
	const end = above < 0 ? cupLives.at(-1) : cupLives[0];
	return end
		? { workingS: above < 0 ? end.workingS : workingS, peakC: end.peakC }
		: { workingS, peakC: null };
}

/** Whether the cup in hand, forgotten, passes what counts as calm: by what is in it, where the plan knows its heat. */
export function isHotCup(c: ProcessContext): boolean {
	const batch = batchAtWork(c);
	if (!batch || !c.cup) return false;
	const { peakC } = cupLife(batch, massInCup(c.cup.massesG));
	const calmPeakC = c.plan.cure?.materials.find(
		(m) => m.materialId === batch.materialId
	)?.calmPeakC;
	return peakC !== null && calmPeakC !== undefined && peakC > calmPeakC;
}

/** What the parts of a cup take up, mL; a part whose density the sheet does not give counts as dense as the mix. */
export function volumeInCup(
	plan: Plan,
	{ materialId }: Batch,
	massesG: Record<string, number>
): number {
	const sheet = sheetOf(plan, materialId);
	const densityOf = (part: string) =>
		sheet?.parts.find((p) => p.part === part)?.densityGPerMl ?? sheet?.mixedDensityGPerMl ?? NaN;
	return Object.entries(massesG).reduce((sum, [part, massG]) => sum + massG / densityOf(part), 0);
}

/** The largest cup of the shop to its brim, mL. */
export function largestCupMl({ plan }: ProcessContext): number {
	return Math.max(...plan.inputs.shop.cupVolumesMl);
}

/** The data sheet of a material of the plan. */
export function sheetOf({ inputs }: Plan, materialId: string): Sheet | undefined {
	return Object.values(inputs.materials).find(({ id }) => id === materialId);
}
