import type { Plan } from '../plan/plan';
import type { ProcessContext } from './context';
import type { LoggedEvent } from './events';
import { addSeconds, secondsBetween } from './instant';
import { contextOf, fold } from './job';
import { rehearseJob, type RehearsalOptions } from './rehearsal';
import { lastShiftStart, withinShifts, type Hours } from './rehearsal-shift';

/** A pause between two entries from which on the second belongs to another session at the bench. */
const SESSION_GAP_S = 4 * 3600;
/** How many days earlier the crew may have to begin, counting weekends. */
const MOST_DAYS = 30;

export interface LiveOptions extends Omit<RehearsalOptions, 'startAt' | 'startable'> {
	hours: Hours;
	/** The plan for a start at this instant. */
	planAt: (startAt: string) => Plan;
	/** Days before `at` on which work began, or earlier when a weekend lies between. */
	daysBefore: number;
	/** An instant of the finished log, for example when its window closes. */
	anchor: (context: ProcessContext) => string;
	/** Where that instant must fall. */
	at: string;
}

/** The log with its last session moved `bySeconds` later; the opening stays when the plan was accepted. */
function moveLastSession(log: readonly LoggedEvent[], bySeconds: number): LoggedEvent[] {
	const begins = log.findLastIndex(({ event }, i) => {
		const before = log[i - 1];
		return before === undefined || secondsBetween(before.event.at, event.at) >= SESSION_GAP_S;
	});
	return log.map((logged, i) => {
		if (i === 0 || i < begins) return logged;
		return {
			...logged,
			event: { ...logged.event, at: addSeconds(logged.event.at, bySeconds) }
		};
	});
}

/**
 * A rehearsed mold that is alive at an instant: work begins at the better start where the plan offers
 * one, earlier sessions lie in the shop's shifts, and the last one ends such that its window, test or
 * request falls where it is wanted.
 *
 * @throws Error when the machine refuses an entry, or no start within 30 days leads there
 */
export function rehearseLive(options: LiveOptions): { plan: Plan; log: LoggedEvent[] } {
	const { hours, planAt, daysBefore, anchor, at, ...rest } = options;
	for (let days = daysBefore; days <= daysBefore + MOST_DAYS; days++) {
		const asked = planAt(lastShiftStart(hours, addSeconds(at, -days * 86_400)));
		const plan = asked.betterStartAt === null ? asked : planAt(asked.betterStartAt);
		const { startAt } = plan.inputs;
		if (secondsBetween(startAt, at) < 0) continue;
		const { log, state } = rehearseJob(plan, { ...rest, startAt, startable: withinShifts(hours) });
		const laterS = secondsBetween(anchor(contextOf(state)), at);
		if (laterS < 0) continue;
		const moved = moveLastSession(log, laterS);
		fold(plan, moved);
		return { plan, log: moved };
	}
	throw new Error(`no start within ${MOST_DAYS} days before ${at} leads there`);
}
