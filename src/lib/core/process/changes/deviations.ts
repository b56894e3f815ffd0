import type { Deviation, ProcessContext } from '../context';
import type { EventOf, ProcessEvent } from '../events';
import type { Change } from './work';

/** The deviations with one more, not yet decided. */
export function deviation(
	c: ProcessContext,
	e: ProcessEvent,
	what: string,
	blocking = false
): Deviation[] {
	return [...c.deviations, { at: e.at, by: e.by, what, blocking, decided: null }];
}

export function decided(c: ProcessContext, e: EventOf<'deviation.decided'>): Change {
	const decision = { accepted: e.accepted, by: e.by, at: e.at, note: e.note };
	return {
		lastAt: e.at,
		deviations: c.deviations.map((d) => (d.decided ? d : { ...d, decided: decision }))
	};
}
