import { earlyTest } from '../process/changes/coats';
import { cupInPreparation, type ProcessContext } from '../process/context';
import { cupClosesAt, mixedFast } from '../process/cup-life';
import { secondsBetween } from '../process/instant';

/**
 * What the bench asks once before it enters an act that will be noted as a deviation, with both numbers; null
 * when there is nothing to ask. The machine takes the act either way: what happened is evidence.
 *
 * @param event - the act as typed, not yet with `at`
 */
export function questionBefore(
	c: ProcessContext,
	event: Record<string, unknown>,
	at: string
): string | null {
	switch (event.type) {
		case 'cup.mixed': {
			const fast = mixedFast(c, cupInPreparation(c), at);
			if (!fast || c.plan.processVersion < 5) return null;
			return `Mixed already? It was weighed ${fast.tookS} s ago, and the data sheet asks for ${fast.mixS} s of mixing. A streak is a patch that stays sticky: mix on. Entered now, it is noted as a deviation`;
		}
		case 'cup.applied': {
			const closesAt = cupClosesAt(c, c.cup);
			if (closesAt === null || secondsBetween(closesAt, at) <= 0) return null;
			const lateMin = Math.ceil(secondsBetween(closesAt, at) / 60);
			return `Is it really on the mold? Its time was over ${lateMin} min ago, at ${closesAt}. Past it a cup no longer wets and bonds: set it aside. Laid all the same, it is a deviation that a supervisor decides`;
		}
		case 'tack.tested': {
			const early = event.result === 'wet' ? null : earlyTest(c, at);
			if (!early || event.result === undefined) return null;
			return `So soon? ${early.title} was laid ${early.tookMin} min ago; the data sheet lets expect about ${early.expectedMin} min. Press a clean fingertip at another place, where it lies thickest. Entered now, it is noted as a deviation`;
		}
		default:
			return null;
	}
}
