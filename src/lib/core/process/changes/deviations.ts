import type { Decision, Deviation, ProcessContext } from '../context';
import type { EventOf, ProcessEvent } from '../events';
import type { Change } from './work';

/** The deviations with one more, not yet decided. */
export function deviation(
	c: ProcessContext,
	e: ProcessEvent,
	what: string,
	blocking = false
): Deviation[] {
	return [...c.deviations, { at: e.at, by: e.by, what, blocking, decided: null, earlier: [] }];
}

/**
 * What work waits for: the last deviation that blocks it, until that is accepted or done again. A
 * refusal keeps it waiting.
 */
export function waitedFor(deviations: readonly Deviation[]): Deviation | null {
	const last = deviations.findLast(({ blocking }) => blocking);
	return last && !last.decided?.accepted && !last.decided?.redone ? last : null;
}

/** What still waits for a word: never decided, or refused and waited for all the same. */
export function openDeviations(deviations: readonly Deviation[]): Deviation[] {
	const waiting = waitedFor(deviations);
	return deviations.filter((d) => d.decided === null || d === waiting);
}

function answer(d: Deviation, decided: Decision): Deviation {
	return { ...d, decided, earlier: d.decided ? [...d.earlier, d.decided] : d.earlier };
}

/** The deviations once a supervisor has decided all that is open, also what was refused before. */
export function decideAll(deviations: Deviation[], decision: Decision): Deviation[] {
	const open = openDeviations(deviations);
	return deviations.map((d) => (open.includes(d) ? answer(d, decision) : d));
}

/**
 * The deviations once the work that one waits for is done again: that is its answer, and the record says
 * so. What blocks nothing stays open until the next signature, which a supervisor gives knowing it.
 */
export function redone(
	deviations: Deviation[],
	{ by, at }: ProcessEvent,
	note: string
): Deviation[] {
	const waiting = waitedFor(deviations);
	const decision = { accepted: false, redone: true, by, at, note };
	return deviations.map((d) =>
		d === waiting || (d.blocking && d.decided === null) ? answer(d, decision) : d
	);
}

export function decided(c: ProcessContext, e: EventOf<'deviation.decided'>): Change {
	const { accepted, by, at, note } = e;
	return {
		lastAt: at,
		deviations: decideAll(c.deviations, { accepted, redone: false, by, at, note }),
		...(c.inspection && accepted ? { inspection: { ...c.inspection, isAccepted: true } } : {})
	};
}
