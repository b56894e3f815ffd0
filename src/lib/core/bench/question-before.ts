import { ENGLISH } from '../language/words';
import { titleInWords } from '../process/steps/batch-words';
import { finding } from '../process/chart/finding';
import { largeCup } from '../process/changes/cups';
import { batchAtWork, cupInPreparation, isSince, type ProcessContext } from '../process/context';
import { deviationText } from '../process/deviation-words';
import { earlyTest } from '../process/early-test';
import type { EventOf } from '../process/events';
import { cupClosesAt, mixedFast } from '../process/cup-life';
import { cupLife, largestCupMl, volumeInCup } from '../process/cup-mass';
import { secondsBetween } from '../process/instant';
import { roomFaults, type RoomReading } from '../process/room-check';

/**
 * What the bench asks once before it enters an act that will be noted as a deviation, with both numbers; null
 * when there is nothing to ask. The machine takes the act either way: what happened is evidence.
 *
 * @param event - the act as typed, not yet with `at`
 */
export function questionBefore(
	c: ProcessContext,
	event: Record<string, unknown>,
	at: string,
	w = ENGLISH
): string | null {
	const said = w.questions;
	switch (event.type) {
		case 'room.read': {
			// Its fields were read before anything is asked.
			const faults = isSince(c, 6) ? roomFaults(c, event as unknown as RoomReading) : [];
			if (faults.length === 0) return null;
			return said.roomRead(faults.map((fault) => deviationText({ said: fault }, w)).join(' '));
		}
		case 'cup.weighed': {
			const massesG = massesOf(event);
			const large = c.plan.processVersion < 6 ? null : largeCup(c, { massesG });
			const batch = batchAtWork(c);
			// What no cup holds is refused, which says more than a question.
			if (!large || !batch || volumeInCup(c.plan, batch, massesG) > largestCupMl(c)) return null;
			const { workingS, peakC } = cupLife(batch, large.massG);
			return said.largeCup({
				...large,
				mostG: Math.round(batch.largestCupG),
				workingMin: Math.floor(workingS / 60),
				peakC: peakC === null ? null : Math.round(peakC)
			});
		}
		case 'cup.mixed': {
			const fast = mixedFast(c, cupInPreparation(c), at);
			if (!fast || c.plan.processVersion < 5) return null;
			return said.mixedFast(fast);
		}
		case 'cup.applied': {
			const closesAt = cupClosesAt(c, c.cup);
			if (closesAt === null || secondsBetween(closesAt, at) <= 0) return null;
			const lateMin = Math.ceil(secondsBetween(closesAt, at) / 60);
			return said.laidLate({ lateMin, closesAt });
		}
		case 'tack.tested': {
			const early = event.result === 'wet' ? null : earlyTest(c, at);
			if (!early || event.result === undefined) return null;
			const given = { ...early, title: titleInWords(early.title, w) };
			const test = { result: event.result as EventOf<'tack.tested'>['result'], at };
			return finding(c, test, c.laidG > 0 ? 'coat' : 'coat below') === 'early'
				? said.testedTooSoon(given)
				: said.testedEarly(given);
		}
		default:
			return null;
	}
}

function massesOf({ massesG }: Record<string, unknown>): Record<string, number> {
	return Object.fromEntries(
		Object.entries(massesG ?? {}).filter(
			(entry): entry is [string, number] => typeof entry[1] === 'number'
		)
	);
}
