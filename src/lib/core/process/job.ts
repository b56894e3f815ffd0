import type { Plan } from '../plan/plan';
import type { ProcessContext } from './context';
import type { EventType, LoggedEvent } from './events';
import { refusalOf } from './refusal';
import { firstSnapshot, nextSnapshot, type Snapshot } from './transition';
import { undo } from './undo';

/** A job as its log leaves it: the machine's state and the events that made it so. */
export interface JobState {
	jobId: string;
	title: string;
	openedBy: string;
	snapshot: Snapshot;
	/** Events that count: all but those undone and the undoings themselves. */
	effective: LoggedEvent[];
	/** Ids of events that were undone, with the reason. */
	undone: Record<string, string>;
	lastSeq: number;
	lastAt: string;
}

export type Advance =
	{ ok: true; state: JobState } | { ok: false; reason: string; allowed: EventType[] };

export function contextOf(state: JobState): ProcessContext {
	return state.snapshot.context;
}

/**
 * A job at its beginning.
 *
 * @throws Error when the first event is not "job.opened"
 */
export function openJob(plan: Plan, logged: LoggedEvent): JobState {
	const { event } = logged;
	if (event.type !== 'job.opened') {
		throw new Error(`a log begins with job.opened, not with ${event.type}`);
	}
	return {
		jobId: event.jobId,
		title: event.title,
		openedBy: event.by,
		snapshot: firstSnapshot(plan, event.at),
		effective: [logged],
		undone: {},
		lastSeq: logged.seq,
		lastAt: event.at
	};
}

/**
 * The job after one more event, or the reason why the event is refused and what would be taken.
 * Pure: the same state and event always give the same answer.
 */
export function advance(state: JobState, logged: LoggedEvent): Advance {
	if (logged.event.type === 'act.undone') return undo(state, logged, logged.event);
	const refusal = refusalOf(state, logged.event);
	if (refusal) return refusal;
	return {
		ok: true,
		state: {
			...state,
			snapshot: nextSnapshot(state.snapshot, logged.event),
			effective: [...state.effective, logged],
			lastSeq: logged.seq,
			lastAt: logged.event.at
		}
	};
}

/**
 * The job after its whole log.
 *
 * @throws Error at the first event that the machine refuses, naming its number and the reason
 */
export function fold(plan: Plan, log: readonly LoggedEvent[]): JobState {
	const [first, ...rest] = log;
	if (!first) throw new Error('a log has at least the event job.opened');
	return foldOn(openJob(plan, first), rest);
}

/**
 * The job after further events; with `fold`, the log may be read in pieces.
 *
 * @throws Error at the first event that the machine refuses, naming its number and the reason
 */
export function foldOn(state: JobState, events: readonly LoggedEvent[]): JobState {
	let job = state;
	for (const logged of events) {
		const next = advance(job, logged);
		if (!next.ok) throw new Error(`event ${logged.seq} (${logged.event.type}): ${next.reason}`);
		job = next.state;
	}
	return job;
}
