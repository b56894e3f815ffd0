import type { ProcessContext } from './context';
import type { EventOf, EventType } from './events';
import { addSeconds } from './instant';

type Data<T extends EventType> = Omit<EventOf<T>, 'type' | 'at' | 'by'>;

/** One act of a careful crew: what, after how long, not before when, and who does it. */
export interface RehearsedAct {
	event: { [T in EventType]: { type: T } & Data<T> }[EventType];
	tookS: number;
	notBeforeAt: string | null;
	who: 'worker' | 'supervisor' | 'mixer';
}

/** An act of the worker; `tookS` counts from the act before it. */
export function act(event: RehearsedAct['event'], tookS: number): RehearsedAct {
	return { event, tookS, notBeforeAt: null, who: 'worker' };
}

/** The same act, not before `seconds` after `sinceAt`. */
export function waiting(
	rehearsed: RehearsedAct,
	sinceAt: string | null,
	seconds: number
): RehearsedAct {
	return { ...rehearsed, notBeforeAt: sinceAt === null ? null : addSeconds(sinceAt, seconds) };
}

export function bySupervisor(rehearsed: RehearsedAct): RehearsedAct {
	return { ...rehearsed, who: 'supervisor' };
}

/**
 * A small deviation such as a steady hand leaves: between -1 and 1, the same for the same log, without
 * chance.
 */
export function wobble(context: ProcessContext, salt: number): number {
	const turn = context.coatIndex * 7 + context.roundIndex * 11 + context.cupsLaid * 3 + salt;
	return Math.sin(turn * 12.9898);
}
