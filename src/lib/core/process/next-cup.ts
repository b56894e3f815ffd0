import { readableSplit } from '../laws/readable-split';
import type { Cup } from '../plan/plan';
import { batchAtWork, cupInPreparation, isLaying, isSince, type ProcessContext } from './context';
import { massInCup } from './cup-mass';

/** A remainder below this part of the batch is not worth another cup; common practice, no source. */
const WORTH_A_CUP_FRACTION = 0.03;
/** How far what is laid may differ from the planned cups before the rest is split anew. */
const AS_PLANNED_FRACTION = 0.02;

export interface NextCup {
	cup: Cup;
	/** 1-based number of this cup, and the last number of the coat or round: those set aside keep theirs. */
	number: number;
	of: number;
	/** The rest was split anew, because earlier cups came out short or long. */
	resplit: boolean;
}

/**
 * The next cup to weigh for the coat or round at work: the planned one while the work goes as
 * planned, else the rest of the batch in equal cups, none above what one person can lay in time.
 *
 * @returns null when the batch is laid
 */
export function nextCup(context: ProcessContext): NextCup | null {
	const batch = batchAtWork(context);
	if (!batch) return null;
	const { cups, largestCupG } = batch;
	const { laidG, cupsLaid } = context;

	const plannedG = cups.slice(0, cupsLaid).reduce((sum, cup) => sum + cup.massG, 0);
	const planned = cups[cupsLaid];
	if (planned && Math.abs(laidG - plannedG) <= AS_PLANNED_FRACTION * batch.massG) {
		return { cup: planned, ...numbers(context, cups.length - cupsLaid), resplit: false };
	}

	const leftG = batch.massG - laidG;
	if (leftG <= WORTH_A_CUP_FRACTION * batch.massG) return null;
	const more = Math.max(1, Math.ceil(leftG / largestCupG - 1e-9));
	const cup = split(context, leftG / more);
	return cup && { cup, ...numbers(context, more), resplit: true };
}

/** The number of the cup that comes next, of which `left` are still to lay; one on the scale has its own. */
function numbers(context: ProcessContext, left: number): { number: number; of: number } {
	const { cupsBegun, cupsLaid } = context;
	const begun = cupsBegun[batchAtWork(context)?.id ?? ''] ?? 0;
	const number = isSince(context, 6)
		? (cupInPreparation(context)?.number ?? begun + 1)
		: cupsLaid + 1;
	return { number, of: number + left - 1 };
}

/**
 * The cup to weigh while another is laid: what follows once that one is on.
 *
 * @returns null when no cup is being laid, or it is the last of its batch
 */
export function cupAfter(context: ProcessContext): NextCup | null {
	const { cup, laidG, cupsLaid } = context;
	if (!cup || !isLaying(context)) return null;
	return nextCup({
		...context,
		laidG: laidG + massInCup(cup.massesG),
		cupsLaid: cupsLaid + 1
	});
}

/** The cup that belongs on the scale now: the next one while one is laid. */
export function cupToWeigh(context: ProcessContext): NextCup | null {
	return isLaying(context) ? cupAfter(context) : nextCup(context);
}

function split(context: ProcessContext, massG: number): Cup | null {
	const batch = batchAtWork(context);
	const like = batch?.cups[0];
	if (!batch || !like) return null;
	const readabilityG = context.plan.inputs.shop.scaleReadabilityG;
	const fractionOf = (part: string) =>
		batch.fractions.find((f) => f.part === part)?.fraction ?? Number.NaN;
	if (like.parts.length === 1) {
		return { ...like, massG, parts: like.parts.map(({ part }) => ({ part, massG })) };
	}

	const readable = readableSplit({
		batchG: massG,
		parts: like.parts.map(({ part }) => fractionOf(part)),
		readabilityG,
		toleranceFraction: batch.toleranceFraction / 2
	});
	if (!readable) return like;
	return {
		massG: readable.batchG,
		parts: like.parts.map(({ part }, i) => ({ part, massG: readable.massesG[i] ?? 0 })),
		cupVolumeMl: like.cupVolumeMl
	};
}
