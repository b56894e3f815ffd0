import { isSince, type Decision, type Deviation, type ProcessContext } from '../context';
import { inEnglish, type Said } from '../deviation-words';
import type { EventOf, ProcessEvent } from '../events';
import type { Change } from './work';

/** The deviations with one more, not yet decided. */
export function deviation(
	c: ProcessContext,
	e: ProcessEvent,
	said: Said,
	blocking = false
): Deviation[] {
	const what = inEnglish(said);
	return [
		...c.deviations,
		{ at: e.at, by: e.by, what, said, blocking, decided: null, earlier: [] }
	];
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
	return deviations.filter(
		(d) => d.decided === null || d.decided.isUnderWay === true || d === waiting
	);
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
export function redone(deviations: Deviation[], e: ProcessEvent, note: string): Deviation[] {
	const { by, at } = e;
	return answerBlocking(deviations, { accepted: false, redone: true, by, at, note });
}

/** The deviations once work goes back for the one it waits for: nothing is done about it yet. */
export function sentForRedoing(
	deviations: Deviation[],
	{ by, at }: Pick<ProcessEvent, 'by' | 'at'>,
	note: string
): Deviation[] {
	const decision = { accepted: false, redone: false, isUnderWay: true, by, at, note };
	return answerBlocking(deviations, decision);
}

/** The deviations once what was sent for redoing is done. */
export function redoneUnderWay(
	deviations: Deviation[],
	{ by, at }: ProcessEvent,
	note: string
): Deviation[] {
	const decision = { accepted: false, redone: true, by, at, note };
	return deviations.map((d) => (d.decided?.isUnderWay ? answer(d, decision) : d));
}

function answerBlocking(deviations: Deviation[], decision: Decision): Deviation[] {
	const waiting = waitedFor(deviations);
	return deviations.map((d) =>
		d === waiting || (d.blocking && d.decided === null) ? answer(d, decision) : d
	);
}

/** A word on what is waited for; what waits for nothing is decided with the next signature. */
export function decided(c: ProcessContext, e: EventOf<'deviation.decided'>): Change {
	const { accepted, by, at, note } = e;
	const decision = { accepted, redone: false, by, at, note };
	const waiting = waitedFor(c.deviations);
	return {
		lastAt: at,
		deviations: isSince(c, 3)
			? c.deviations.map((d) => (d === waiting ? answer(d, decision) : d))
			: decideAll(c.deviations, decision),
		...(c.inspection && accepted ? { inspection: { ...c.inspection, isAccepted: true } } : {})
	};
}
