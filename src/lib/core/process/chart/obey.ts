import type { ProcessContext } from '../context';
import type { EventOf, EventType, ProcessEvent } from '../events';
import { RULES, type RuleName } from '../rules';

/** A guard made of named rules, so that a refusal can say which of them failed. */
export const obeys = (...rules: RuleName[]) => ({ type: 'obeys' as const, params: { rules } });
/** What a supervisor's decision must satisfy. */
export const SUPERVISOR: RuleName[] = ['afterLast', 'notOwnWork'];
/** What every act at the bench must satisfy. */
export const BENCH: RuleName[] = ['afterLast', 'inHand'];
export const bench = (...rules: RuleName[]) => obeys(...BENCH, ...rules);

export function holdAll(rules: RuleName[], context: ProcessContext, event: ProcessEvent): boolean {
	return rules.every((name) => RULES[name].holds(context, event));
}

/** Narrows the event of an action; the chart never runs it for another type. */
export function only<T extends EventType>(event: ProcessEvent, type: T): EventOf<T> {
	if (event.type !== type) throw new Error(`expected the event ${type}, got ${event.type}`);
	return event as EventOf<T>;
}

/** The end of a trouble, by whoever may end it. */
export const mended = (
	event: ProcessEvent
): EventOf<'trouble.mended'> | EventOf<'trouble.decided'> =>
	event.type === 'trouble.decided' ? event : only(event, 'trouble.mended');
