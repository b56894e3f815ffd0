import { batchAtWork, isSince, type CupAtWork, type ProcessContext } from './context';
import { isOnRatio } from './cup-check';
import { cupLife, massInCup } from './cup-mass';
import { addSeconds, secondsBetween } from './instant';

/**
 * Until when a mixed cup can be laid: its pot life counts from when the parts met, so whoever mixes slowly has
 * less left. Null for a cup that is not mixed.
 */
export function cupClosesAt(c: ProcessContext, cup: CupAtWork | null): string | null {
	const batch = batchAtWork(c);
	if (!batch || !cup?.mixedAt) return null;
	return cup.metAt !== null && isSince(c, 5)
		? potLifeEndsAt(c, cup)
		: addSeconds(cup.mixedAt, cupLife(batch, massInCup(cup.massesG)).workingS);
}

/** When the pot life of a cup ends whose parts have met, mixed or not; null while they stand apart. */
export function potLifeEndsAt(c: ProcessContext, cup: CupAtWork | null): string | null {
	const batch = batchAtWork(c);
	if (!batch || !cup?.metAt) return null;
	return addSeconds(cup.metAt, batch.mixS + cupLife(batch, massInCup(cup.massesG)).workingS);
}

/** A cup mixed at `at` sooner than its sheet asks for: both times in whole seconds; else null. */
export function mixedFast(
	c: ProcessContext,
	cup: CupAtWork | null,
	at: string
): { tookS: number; mixS: number } | null {
	const batch = batchAtWork(c);
	if (!batch || !cup || batch.fractions.length < 2) return null;
	const { weighedAt, metAt } = cup;
	const tookS = Math.round(secondsBetween(mixingFrom({ weighedAt, metAt }), at));
	return tookS < batch.mixS ? { tookS, mixS: Math.round(batch.mixS) } : null;
}

/** Since when a weighed cup is mixed at the earliest: it is on the scale, and the parts are together. */
export function mixingFrom({ weighedAt, metAt }: Pick<CupAtWork, 'weighedAt' | 'metAt'>): string {
	return metAt !== null && metAt > weighedAt ? metAt : weighedAt;
}

/** Whether the cup in hand is past its time at `at`: while it is laid, and from version 6 on before it is mixed. */
export function isOverdue(c: ProcessContext, at: string): boolean {
	return (
		isPast(isSince(c, 6) ? potLifeEndsAt(c, c.cup) : null, at) || isPast(cupClosesAt(c, c.cup), at)
	);
}

/** Whether the cup prepared meanwhile is past its time at `at`, mixed or not; from version 6 on. */
export function isNextOverdue(c: ProcessContext, at: string): boolean {
	return isSince(c, 6) && isPast(potLifeEndsAt(c, c.cupAhead), at);
}

function isPast(closesAt: string | null, at: string): boolean {
	return closesAt !== null && secondsBetween(closesAt, at) > 0;
}

/** A cup that is being mixed: since when, how long its sheet asks for, and when its pot life ends. */
export interface Mixing {
	sinceAt: string;
	mixS: number;
	closesAt: string;
}

/** The mixing of the cup in hand, which is weighed and on ratio; null while there is none to mix. */
export function mixingOf(c: ProcessContext): Mixing | null {
	const batch = batchAtWork(c);
	const { cup } = c;
	if (!batch || !cup?.metAt || cup.mixedAt !== null || !isSince(c, 5)) return null;
	if (!isOnRatio(batch, cup.massesG)) return null;
	return {
		sinceAt: mixingFrom(cup),
		mixS: batch.mixS,
		closesAt: potLifeEndsAt(c, cup) ?? cup.metAt
	};
}
