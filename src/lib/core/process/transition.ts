import { createActor, type ActorScope, type SnapshotFrom } from 'xstate';
import type { Plan } from '../plan/plan';
import { processMachine } from './chart/machine';
import type { ProcessEvent } from './events';

export type Snapshot = SnapshotFrom<typeof processMachine>;
type Scope = ActorScope<Snapshot, ProcessEvent>;

let shared: Scope | null = null;

/**
 * What the machine asks for beside snapshot and event. The chart starts no actors and runs no effects,
 * so one that does nothing serves all jobs; the library's own `transition` starts the machine anew,
 * with a plan that is not there, for each event.
 */
function scopeFor(plan: Plan, openedAt: string): Scope {
	if (shared) return shared;
	const self = createActor(processMachine, { input: { plan, openedAt } });
	const nothing = () => {};
	shared = {
		self,
		id: '',
		sessionId: '',
		system: self.system,
		logger: nothing,
		defer: nothing,
		emit: nothing,
		stopChild: nothing,
		actionExecutor: nothing
	};
	return shared;
}

/** The machine at its beginning, for a job with this plan that was opened at `openedAt`. */
export function firstSnapshot(plan: Plan, openedAt: string): Snapshot {
	return processMachine.getInitialSnapshot(scopeFor(plan, openedAt), { plan, openedAt });
}

/** The machine after one more event. Pure; an event that no guard lets through changes nothing. */
export function nextSnapshot(snapshot: Snapshot, event: ProcessEvent): Snapshot {
	const { plan, lastAt } = snapshot.context;
	return processMachine.transition(snapshot, event, scopeFor(plan, lastAt));
}
