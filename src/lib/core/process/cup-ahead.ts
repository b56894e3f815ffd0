import { batchAtWork, isLaying, isSince, type ProcessContext } from './context';
import { isOnRatio, missingParts } from './cup-check';
import { cupClosesAt, potLifeEndsAt } from './cup-life';
import { massInCup } from './cup-mass';
import { cupAfter } from './next-cup';
import type { CupAhead } from './step';

/** What the bench shows of the cup that is prepared while another is laid; null when none is. */
export function cupAhead(c: ProcessContext): CupAhead | null {
	const batch = batchAtWork(c);
	const cup = c.cupAhead;
	if (!batch || !cup || !isLaying(c)) return null;
	const planned = cupAfter(c);
	return {
		number: cup.number,
		of: planned?.of ?? cup.number,
		massG: massInCup(cup.massesG),
		missing: missingParts(batch, cup.massesG),
		isOnRatio: isOnRatio(batch, cup.massesG),
		metAt: cup.metAt,
		mixedAt: cup.mixedAt,
		closesAt: isSince(c, 6) ? potLifeEndsAt(c, cup) : cupClosesAt(c, cup)
	};
}
