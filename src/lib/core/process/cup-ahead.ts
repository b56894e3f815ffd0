import { batchAtWork, isLaying, type ProcessContext } from './context';
import { isOnRatio } from './cup-check';
import { cupClosesAt } from './cup-life';
import { cupAfter } from './next-cup';
import type { CupAhead } from './step';

/** What the bench shows of the cup that is prepared while another is laid; null when none is. */
export function cupAhead(c: ProcessContext): CupAhead | null {
	const batch = batchAtWork(c);
	const cup = c.cupAhead;
	if (!batch || !cup || !isLaying(c)) return null;
	const planned = cupAfter(c);
	const number = c.cupsLaid + 2;
	return {
		number,
		of: planned?.of ?? number,
		massG: Object.values(cup.massesG).reduce((sum, massG) => sum + massG, 0),
		isOnRatio: isOnRatio(batch, cup.massesG),
		mixedAt: cup.mixedAt,
		closesAt: cupClosesAt(c, cup)
	};
}
