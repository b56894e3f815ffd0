import { getNextTransitions } from 'xstate';
import { ENGLISH } from '../language/words';
import { ACT_LABELS } from './act-labels';
import type { EventType, ProcessEvent } from './events';
import type { Advance, JobState } from './job';
import { rule, type RuleName } from './rules';

type Transition = ReturnType<typeof getNextTransitions>[number];

/** Transitions that an event could take from here, guards not yet asked. */
export function transitionsFor(state: JobState, type: EventType): Transition[] {
	return getNextTransitions(state.snapshot).filter((t) => t.eventType === type);
}

/** Types of event that the step at hand takes at all. */
export function allowedTypes(state: JobState): EventType[] {
	if (state.snapshot.status !== 'active') return [];
	const types = getNextTransitions(state.snapshot).map((t) => t.eventType as EventType);
	return [...new Set(types)].filter((type) => type in ACT_LABELS);
}

/** Names of the rules a transition's guard is made of. */
export function rulesOf(transition: Transition): RuleName[] {
	const { guard } = transition;
	if (typeof guard !== 'object' || guard === null || !('params' in guard)) return [];
	const { params } = guard as { params?: { rules?: RuleName[] } };
	return params?.rules ?? [];
}

/**
 * Why an event is refused, in words a person at the bench can act on; null when the machine takes it.
 */
export function refusalOf(
	state: JobState,
	event: ProcessEvent,
	w = ENGLISH
): Extract<Advance, { ok: false }> | null {
	const { snapshot } = state;
	if (snapshot.status !== 'active') {
		return { ok: false, reason: w.rules.ended, allowed: [] };
	}
	if (snapshot.can(event)) return null;

	const allowed = allowedTypes(state);
	const candidates = transitionsFor(state, event.type);
	const failing = candidates
		.map((t) => rulesOf(t).filter((name) => !rule(name).holds(snapshot.context, event)))
		.sort((a, b) => a.length - b.length)
		.at(0);
	const reason =
		failing && failing.length > 0
			? failing.map((name) => rule(name).says(snapshot.context, event, w)).join('; ')
			: w.rules.notNow({
					act: w.acts[event.type],
					possible: allowed.map((type) => w.acts[type]).join(', ')
				});
	return { ok: false, reason, allowed };
}
