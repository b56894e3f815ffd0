import type { RuleWords } from '../language/en/rules';
import { ENGLISH } from '../language/words';
import { keptOf } from './changes/taken-back';
import { isSince, type TakenBack } from './context';
import type { EventOf, EventType, LoggedEvent, ProcessEvent } from './events';
import type { Advance, JobState } from './job';
import { allowedTypes } from './refusal';
import { statePath } from './state-path';
import { firstSnapshot, nextSnapshot, type Snapshot } from './transition';
import { needsSupervisor } from './troubles';

/** Acts of a supervisor, and ends: never undone, since others have acted on them. */
const FINAL: readonly EventType[] = [
	'job.opened',
	'hold.signed',
	'hold.sentBack',
	'deviation.decided',
	'trouble.decided',
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
	if (!last || last.event.by !== by || isFinal(state, last.event.type)) return null;
	return isBeforeSupervisor(state, last.event) ? null : last;
}

/**
 * The last entry, when it put the work before a supervisor: only one of those takes it back. Null when there
 * is none.
 */
export function takenBackBySupervisor(state: JobState): LoggedEvent | null {
	const last = lastOfAll(state);
	return last && state.snapshot.status === 'active' && isBeforeSupervisor(state, last.event)
		? last
		: null;
}

const lastOfAll = ({ effective }: JobState): LoggedEvent | undefined =>
	effective.findLast(({ event }) => !READINGS.includes(event.type));

/** Taken back by the crew, it would be a way round a supervisor's word, abrading or a second look. */
function isBeforeSupervisor(state: JobState, event: ProcessEvent): boolean {
	const { context } = state.snapshot;
	if (!isSince(context, 5)) return false;
	const path = statePath(state.snapshot);
	switch (event.type) {
		case 'trouble.reported':
			return (
				event.trouble === 'recoat-missed' ||
				needsSupervisor(event.trouble, context.plan.processVersion)
			);
		case 'tack.tested':
			return path === 'coating.missed';
		case 'thickness.measured':
			return path === 'thickness.thin';
		case 'test.judged':
			return event.result === 'bad';
		default:
			return false;
	}
}

function refused(state: JobState, reason: string): Advance {
	return { ok: false, reason, allowed: allowedTypes(state) };
}

/** The machine after these entries; what was taken back among them is remembered where it was. */
function snapshotOf(
	plan: Snapshot['context']['plan'],
	effective: readonly LoggedEvent[],
	takenBack: JobState['takenBack']
): Snapshot {
	const [first, ...rest] = effective;
	if (!first) throw new Error('a log has at least the event job.opened');
	const keptAfter = (count: number) =>
		takenBack.filter(({ after }) => Math.min(after, effective.length) === count);
	return rest.reduce(
		(snapshot, { event }, i) => remembering(nextSnapshot(snapshot, event), keptAfter(i + 2)),
		remembering(firstSnapshot(plan, first.event.at), keptAfter(1))
	);
}

function remembering(snapshot: Snapshot, kept: readonly { what: TakenBack }[]): Snapshot {
	if (kept.length === 0) return snapshot;
	const takenBack = [...snapshot.context.takenBack, ...kept.map(({ what }) => what)];
	return { ...snapshot, context: { ...snapshot.context, takenBack } } as Snapshot;
}

/**
 * Takes the last entry that counts out of the account, by a further entry that names it: the log
 * itself keeps both. Only the person who made an entry can undo it, and only while no act has followed;
 * what others have read since stays.
 */
export function undo(
	state: JobState,
	logged: LoggedEvent,
	event: EventOf<'act.undone'> | EventOf<'act.takenBack'>,
	w = ENGLISH
): Advance {
	const said = w.rules;
	const isSupervisors = event.type === 'act.takenBack';
	const last = isSupervisors
		? lastOfAll(state)
		: state.effective.findLast(
				({ event: { by, type } }) => by === event.by || !READINGS.includes(type)
			);
	if (state.snapshot.status !== 'active') {
		return refused(state, said.ended);
	}
	if (!last || last.id !== event.undoes) {
		return refused(state, said.undoLastOnly);
	}
	if (FINAL.includes(last.event.type)) return refused(state, said.undoStands);
	if (isFinal(state, last.event.type)) return refused(state, said.undoInspection);
	const refusal = isSupervisors
		? refusalOfSupervisor(state, last.event, event.by, said)
		: refusalOfDoer(state, last.event, event.by, said);
	if (refusal !== null) return refused(state, refusal);
	if (Date.parse(event.at) < Date.parse(state.lastAt)) {
		return refused(state, said.datedBefore({ at: event.at, lastAt: state.lastAt }));
	}

	const effective = state.effective.filter(({ id }) => id !== last.id);
	const what = isSince(state.snapshot.context, 5)
		? keptOf(last.event, state.snapshot.context)
		: null;
	const takenBack =
		what === null ? state.takenBack : [...state.takenBack, { after: effective.length, what }];
	const rebuilt = snapshotOf(state.snapshot.context.plan, effective, takenBack);
	return {
		ok: true,
		state: {
			...state,
			snapshot: withLastAt(rebuilt, event.at),
			effective,
			takenBack,
			undone: { ...state.undone, [last.id]: event.reason },
			lastSeq: logged.seq,
			lastAt: event.at
		}
	};
}

function refusalOfDoer(
	state: JobState,
	entry: ProcessEvent,
	by: string,
	said: RuleWords
): string | null {
	if (entry.by !== by) return said.undoOwnOnly;
	return isBeforeSupervisor(state, entry) ? said.undoBySupervisor : null;
}

function refusalOfSupervisor(
	state: JobState,
	entry: ProcessEvent,
	by: string,
	said: RuleWords
): string | null {
	if (!isBeforeSupervisor(state, entry)) return said.undoByDoer;
	return state.snapshot.context.workers.includes(by) ? said.undoOwnStop : null;
}

/** Time does not run backward because an entry was taken back. */
function withLastAt(snapshot: Snapshot, at: string): Snapshot {
	return { ...snapshot, context: { ...snapshot.context, lastAt: at } } as Snapshot;
}
