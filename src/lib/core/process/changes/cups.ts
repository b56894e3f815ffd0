import {
	batchAtWork,
	cupInPreparation,
	isLaying,
	isSince,
	type CupAtWork,
	type Deviation,
	type ProcessContext
} from '../context';
import { missingParts } from '../cup-check';
import { cupClosesAt, mixedFast } from '../cup-life';
import { cupLife, isMuchLarger, massInCup } from '../cup-mass';
import type { Said } from '../deviation-words';
import type { EventOf, ProcessEvent } from '../events';
import { addSeconds, secondsBetween } from '../instant';
import { cupToWeigh, nextCup } from '../next-cup';
import { deviation } from './deviations';
import type { Change } from './work';

export function cupWeighed(c: ProcessContext, e: EventOf<'cup.weighed'>): Change {
	const cup = { massesG: e.massesG, weighedAt: e.at, mixedAt: null };
	const number = numberOf(c);
	const id = batchAtWork(c)?.id ?? '';
	const begun = Math.max(number, c.cupsBegun[id] ?? 0);
	return {
		cupsBegun: { ...c.cupsBegun, [id]: begun },
		// Before version 6 the parts of the next cup counted as apart till the one in hand was on.
		...(isLaying(c)
			? { cupAhead: { ...cup, number, metAt: isSince(c, 6) ? metAt(c, e) : null } }
			: { cup: { ...cup, number, metAt: metAt(c, e) } })
	};
}

/** The number of the cup on the scale: its own when it was weighed before, else the next free one. */
function numberOf(c: ProcessContext): number {
	const known = cupInPreparation(c);
	if (known) return known.number;
	if (!isSince(c, 6)) return c.cupsLaid + (isLaying(c) ? 2 : 1);
	return (c.cupsBegun[batchAtWork(c)?.id ?? ''] ?? 0) + 1;
}

/** When the parts of the cup on the scale met; an entry taken back does not part them again. */
function metAt(c: ProcessContext, e: EventOf<'cup.weighed'>): string | null {
	const batch = batchAtWork(c);
	if (!batch || batch.fractions.length < 2 || !isSince(c, 5)) return null;
	const before =
		cupInPreparation(c)?.metAt ?? c.takenBack.find(({ metAt }) => metAt !== null)?.metAt ?? null;
	return before ?? (missingParts(batch, e.massesG).length === 0 ? e.at : null);
}

/** What was taken back without the weighings, which were about a cup that is gone. */
const otherThanCups = ({ takenBack }: ProcessContext) =>
	takenBack.filter(({ metAt }) => metAt === null);

export function cupMixed(c: ProcessContext, e: EventOf<'cup.mixed'>): Change {
	const isAhead = isLaying(c);
	const isFurther = isAhead ? c.phase !== 'shell' : c.laidG > 0;
	const late = isFurther && c.windowClosesAt !== null && secondsBetween(c.windowClosesAt, e.at) > 0;
	const cup = isAhead ? c.cupAhead : c.cup;
	const large = isSince(c, 6) ? largeCup(c, cup) : null;
	const fast = isSince(c, 5) ? mixedFast(c, cup, e.at) : null;
	const faults: Said[] = [
		// From version 5 on such a cup is mixed only where nothing bare is left below.
		...(late && !c.abraded && !isSince(c, 5)
			? [{ key: 'mixedLate' as const, given: undefined }]
			: []),
		...(fast ? [{ key: 'mixedFast' as const, given: fast }] : []),
		...(e.notInDate ? [{ key: 'mixerNotInDate' as const, given: undefined }] : []),
		...(large ? [{ key: 'largeCup' as const, given: large }] : [])
	];
	return {
		// What is taken back from now on is about the next cup.
		...(isSince(c, 6) ? { takenBack: otherThanCups(c) } : {}),
		...(e.mixedBy !== undefined && !c.workers.includes(e.mixedBy)
			? { workers: [...c.workers, e.mixedBy] }
			: {}),
		...(isAhead
			? { cupAhead: c.cupAhead && { ...c.cupAhead, mixedAt: e.at, metAt: metOfNext(c, e.at) } }
			: { cup: c.cup && { ...c.cup, mixedAt: e.at } }),
		deviations: noted(c, e, faults)
	};
}

function noted(c: ProcessContext, e: ProcessEvent, faults: readonly Said[]): Deviation[] {
	return faults.reduce(
		(deviations, said) => deviation({ ...c, deviations }, e, said),
		c.deviations
	);
}

/** A cup much heavier than planned, with both masses in whole grams; null for any other. */
export function largeCup(
	c: ProcessContext,
	cup: Pick<CupAtWork, 'massesG'> | null
): { massG: number; plannedG: number } | null {
	const plannedG = cupToWeigh(c)?.cup.massG ?? batchAtWork(c)?.largestCupG;
	const massG = massInCup(cup?.massesG ?? {});
	if (plannedG === undefined || !isMuchLarger(massG, plannedG)) return null;
	return { massG: Math.round(massG), plannedG: Math.round(plannedG) };
}

/** Mixed by somebody else meanwhile: the parts met as that began, or from version 6 on when they were weighed together. */
function metOfNext(c: ProcessContext, mixedAt: string): string | null {
	const batch = batchAtWork(c);
	if (isSince(c, 6)) return c.cupAhead?.metAt ?? null;
	return batch && isSince(c, 5) ? addSeconds(mixedAt, -batch.mixS) : null;
}

/** The cup in hand is laid or set aside: the one prepared meanwhile takes its place, and can be poured together. */
export function moveUp(c: ProcessContext, e: ProcessEvent): Change {
	const isNextRemembered = isSince(c, 6) && isLaying(c);
	return {
		cup: c.cupAhead && {
			...c.cupAhead,
			number: isSince(c, 6) || e.type === 'cup.applied' ? c.cupAhead.number : c.cupsLaid + 1,
			metAt: meetsNow(c, c.cupAhead, e)
		},
		cupAhead: null,
		takenBack: isNextRemembered ? c.takenBack : otherThanCups(c)
	};
}

/** The cup prepared meanwhile is set aside: whatever was taken back of it is gone with it. */
export function nextDropped(c: ProcessContext): Change {
	return { cupAhead: null, ...(isSince(c, 6) ? { takenBack: otherThanCups(c) } : {}) };
}

function meetsNow(c: ProcessContext, cup: CupAtWork, e: ProcessEvent): string | null {
	const parts = batchAtWork(c)?.fractions.length ?? 0;
	if (isSince(c, 6)) return cup.metAt;
	return cup.metAt ?? (isSince(c, 5) && parts > 1 ? e.at : null);
}

/** The cup mixed meanwhile would have gone on the one set aside; the bare surface does not take it. */
export function bothDropped(c: ProcessContext, e: ProcessEvent): Change {
	return {
		cup: null,
		cupAhead: null,
		takenBack: otherThanCups(c),
		deviations: deviation(c, e, { key: 'nextDropped', given: undefined })
	};
}

export function cupApplied(c: ProcessContext, e: ProcessEvent): Change {
	const batch = batchAtWork(c);
	const massG = massInCup(c.cup?.massesG ?? {});
	const closesAt = cupClosesAt(c, c.cup);
	const isLate = closesAt !== null && secondsBetween(closesAt, e.at) > 0;
	const isFurther = c.phase !== 'shell' && c.laidG > 0;
	// From version 5 on every planned cup goes on a bare place; one more than planned covers nothing bare.
	const bare = !isFurther || (isSince(c, 5) && nextCup(c) !== null);
	const closedS =
		bare && !c.abraded && c.windowClosesAt !== null ? secondsBetween(c.windowClosesAt, e.at) : 0;
	const closedMin = Math.ceil(closedS / 60);
	const faults: Said[] = [
		...(closedS > 0
			? [
					{
						key: isFurther ? ('laidOnShut' as const) : ('laidPastWindow' as const),
						given: { min: closedMin }
					}
				]
			: []),
		...(isLate && batch ? [lateCup(c, e.at)] : [])
	];
	return {
		...moveUp(c, e),
		laidAt: e.at,
		firstLaidAt: c.laidG === 0 ? e.at : c.firstLaidAt,
		laidG: c.laidG + massG,
		cupsLaid: c.cupsLaid + 1,
		...(c.phase === 'shell' && batch
			? { finishedAt: e.at, windowClosesAt: addSeconds(e.at, batch.windowClosesS), abraded: false }
			: {}),
		deviations: noted(c, e, faults)
	};
}

/** How long the cup in hand had, and how long it took. */
function lateCup(c: ProcessContext, at: string): Said {
	const batch = batchAtWork(c);
	const { metAt = null, mixedAt = null, massesG = {} } = c.cup ?? {};
	const workingS = batch ? cupLife(batch, massInCup(massesG)).workingS : 0;
	const mixS = batch?.mixS ?? 0;
	const took = (since: string) => Math.ceil(secondsBetween(since, at) / 60);
	return metAt !== null && isSince(c, 5)
		? {
				key: 'laidPastPotLife',
				given: { min: took(metAt), mostMin: Math.floor((mixS + workingS) / 60) }
			}
		: {
				key: 'laidPastWorking',
				given: { min: took(mixedAt ?? at), mostMin: Math.floor(workingS / 60) }
			};
}
