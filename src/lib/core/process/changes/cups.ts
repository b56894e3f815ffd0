import {
	batchAtWork,
	isLaying,
	isSince,
	type CupAtWork,
	type Deviation,
	type ProcessContext
} from '../context';
import { missingParts } from '../cup-check';
import { cupClosesAt, mixedFast } from '../cup-life';
import type { Said } from '../deviation-words';
import type { EventOf, ProcessEvent } from '../events';
import { addSeconds, secondsBetween } from '../instant';
import { nextCup } from '../next-cup';
import { deviation } from './deviations';
import type { Change } from './work';

export function cupWeighed(c: ProcessContext, e: EventOf<'cup.weighed'>): Change {
	const cup = { massesG: e.massesG, weighedAt: e.at, mixedAt: null };
	// The parts of the next cup stand apart till the one in hand is on.
	return isLaying(c)
		? { cupAhead: { ...cup, metAt: null } }
		: { cup: { ...cup, metAt: metAt(c, e) } };
}

/** When the parts of the cup on the scale met; an entry taken back does not part them again. */
function metAt(c: ProcessContext, e: EventOf<'cup.weighed'>): string | null {
	const batch = batchAtWork(c);
	if (!batch || batch.fractions.length < 2 || !isSince(c, 5)) return null;
	const before = c.cup?.metAt ?? c.takenBack.find(({ metAt }) => metAt !== null)?.metAt ?? null;
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
	const fast = isSince(c, 5) ? mixedFast(c, cup, e.at) : null;
	const faults: Said[] = [
		// From version 5 on such a cup is mixed only where nothing bare is left below.
		...(late && !c.abraded && !isSince(c, 5)
			? [{ key: 'mixedLate' as const, given: undefined }]
			: []),
		...(fast ? [{ key: 'mixedFast' as const, given: fast }] : [])
	];
	return {
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

/** Mixed by somebody else meanwhile: the parts met as that began. */
function metOfNext(c: ProcessContext, mixedAt: string): string | null {
	const batch = batchAtWork(c);
	return batch && isSince(c, 5) ? addSeconds(mixedAt, -batch.mixS) : null;
}

/** The cup in hand is laid or set aside: the one prepared meanwhile takes its place, and can be poured together. */
export function moveUp(c: ProcessContext, e: ProcessEvent): Change {
	return {
		cup: c.cupAhead && { ...c.cupAhead, metAt: meetsNow(c, c.cupAhead, e) },
		cupAhead: null,
		takenBack: otherThanCups(c)
	};
}

function meetsNow(c: ProcessContext, cup: CupAtWork, e: ProcessEvent): string | null {
	const parts = batchAtWork(c)?.fractions.length ?? 0;
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
	const massG = Object.values(c.cup?.massesG ?? {}).reduce((sum, part) => sum + part, 0);
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
	const { mixS, workingS } = batchAtWork(c) ?? { mixS: 0, workingS: 0 };
	const { metAt = null, mixedAt = null } = c.cup ?? {};
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
