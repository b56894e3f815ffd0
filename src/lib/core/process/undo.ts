import { isSince } from './context';
import type { EventOf, EventType, LoggedEvent } from './events';
import type { Advance, JobState } from './job';
import { allowedTypes } from './refusal';
import { firstSnapshot, nextSnapshot, type Snapshot } from './transition';

/** Acts of a supervisor, and ends: never undone, since others have acted on them. */
const FINAL: readonly EventType[] = [
	'job.opened',
	'hold.signed',
	'hold.sentBack',
	'deviation.decided',
	'mold.rejected',
	'mold.handedOver',
	'job.abandoned'
];

/** What an inspection found stands too: it is looked at anew, and the first finding stays in sight. */
function isFinal(state: JobState, type: EventType): boolean {
	return FINAL.includes(type) || (type === 'mold.inspected' && isSince(state.snapshot.context, 3));
}

/** Facts beside the work: they change no step, so an act before them can still be taken back. */
const READINGS: readonly EventType[] = ['briefing.read', 'room.read'];

/**
 * The entry that a person can take back: the last one that counts, or their own last with nothing
 * after it but what others have read. Null when there is none.
 */
export function undoable(state: JobState, by: string): LoggedEvent | null {
	const last = state.effective.findLast(
		({ event }) => event.by === by || !READINGS.includes(event.type)
	);
	return last && last.event.by === by && !isFinal(state, last.event.type) ? last : null;
}

function refused(state: JobState, reason: string): Advance {
	return { ok: false, reason, allowed: allowedTypes(state) };
}

function snapshotOf(
	plan: Snapshot['context']['plan'],
	effective: readonly LoggedEvent[]
): Snapshot {
	const [first, ...rest] = effective;
	if (!first) throw new Error('a log has at least the event job.opened');
	return rest.reduce(
		(snapshot, { event }) => nextSnapshot(snapshot, event),
		firstSnapshot(plan, first.event.at)
	);
}

/**
 * Takes the last entry that counts out of the account, by a further entry that names it: the log
 * itself keeps both. Only the person who made an entry can undo it, and only while no act has followed;
 * what others have read since stays.
 */
export function undo(state: JobState, logged: LoggedEvent, event: EventOf<'act.undone'>): Advance {
	const last = state.effective.findLast(
		({ event: { by, type } }) => by === event.by || !READINGS.includes(type)
	);
	if (state.snapshot.status !== 'active') {
		return refused(state, 'this job has ended: its record is closed');
	}
	if (!last || last.id !== event.undoes) {
		return refused(state, 'only the last entry can be undone; correct an earlier one by a trouble');
	}
	if (FINAL.includes(last.event.type))
		return refused(state, 'this entry stands: others have acted on it');
	if (isFinal(state, last.event.type))
		return refused(state, 'what an inspection found stands: inspect anew, and both are kept');
	if (last.event.by !== event.by)
		return refused(state, 'only the person who made an entry can undo it');
	if (Date.parse(event.at) < Date.parse(state.lastAt)) {
		return refused(state, `it is dated ${event.at}, before the last entry at ${state.lastAt}`);
	}

	const effective = state.effective.filter(({ id }) => id !== last.id);
	const rebuilt = snapshotOf(state.snapshot.context.plan, effective);
	return {
		ok: true,
		state: {
			...state,
			snapshot: withLastAt(rebuilt, event.at),
			effective,
			undone: { ...state.undone, [last.id]: event.reason },
			lastSeq: logged.seq,
			lastAt: event.at
		}
	};
}

/** Time does not run backward because an entry was taken back. */
function withLastAt(snapshot: Snapshot, at: string): Snapshot {
	return { ...snapshot, context: { ...snapshot.context, lastAt: at } } as Snapshot;
}
