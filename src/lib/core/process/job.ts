import { ENGLISH } from '../language/words';
import type { Plan } from '../plan/plan';
import type { ProcessContext, TakenBack } from './context';
import type { EventOf, EventType, LoggedEvent, ProcessEvent } from './events';
import { refusalOf } from './refusal';
import { firstSnapshot, nextSnapshot, type Snapshot } from './transition';
import { undo } from './undo';

/** A job as its log leaves it: the machine's state and the events that made it so. */
export interface JobState {
	jobId: string;
	title: string;
	openedBy: string;
	/** A supervisor's word on what the plan may be built with only on one. */
	decided: NonNullable<EventOf<'job.opened'>['decided']> | null;
	snapshot: Snapshot;
	/** Events that count: all but those undone and the undoings themselves. */
	effective: LoggedEvent[];
	/** Ids of events that were undone, with the reason. */
	undone: Record<string, string>;
	/** What was taken back and is remembered: after how many entries that count. From version 5 on. */
	takenBack: Array<{ after: number; what: TakenBack }>;
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
		decided: event.decided ?? null,
		snapshot: firstSnapshot(plan, event.at),
		effective: [logged],
		undone: {},
		takenBack: [],
		lastSeq: logged.seq,
		lastAt: event.at
	};
}

const isUndoing = (
	event: ProcessEvent
): event is EventOf<'act.undone'> | EventOf<'act.takenBack'> =>
	event.type === 'act.undone' || event.type === 'act.takenBack';

/**
 * The job after one more event, or the reason why the event is refused and what would be taken.
 * Pure: the same state and event always give the same answer.
 */
export function advance(state: JobState, logged: LoggedEvent, w = ENGLISH): Advance {
	if (isUndoing(logged.event)) return undo(state, logged, logged.event, w);
	const refusal = refusalOf(state, logged.event, w);
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
	const end = advanceAll(state, events);
	if (end.ok) return end.state;
	const { seq, event } = end.refused;
	throw new Error(`event ${seq} (${event.type}): ${end.reason}`);
}

/**
 * The job after several events, or the first that is refused and why. The same as `advance` for one after
 * another, without a copy of the whole list for each.
 */
export function advanceAll(
	state: JobState,
	events: readonly LoggedEvent[]
): { ok: true; state: JobState } | { ok: false; refused: LoggedEvent; reason: string } {
	const job = { ...state, effective: [...state.effective] };
	for (const logged of events) {
		const { event, seq } = logged;
		if (isUndoing(event)) {
			const next = undo(job, logged, event);
			if (!next.ok) return { ok: false, refused: logged, reason: next.reason };
			Object.assign(job, next.state, { effective: [...next.state.effective] });
			continue;
		}
		const refusal = refusalOf(job, event);
		if (refusal) return { ok: false, refused: logged, reason: refusal.reason };
		job.snapshot = nextSnapshot(job.snapshot, event);
		job.effective.push(logged);
		job.lastSeq = seq;
		job.lastAt = event.at;
	}
	return { ok: true, state: job };
}
