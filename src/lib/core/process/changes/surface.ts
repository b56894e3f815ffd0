import { isSince, type ProcessContext } from '../context';
import type { EventOf, ProcessEvent } from '../events';
import { deviation } from './deviations';
import type { Change } from './work';

export function windowMissed(c: ProcessContext, e: ProcessEvent): Change {
	return {
		cup: null,
		cupAhead: null,
		tackPassed: false,
		deviations: deviation(c, e, { key: 'windowMissed', given: { hadCup: c.cup !== null } })
	};
}

export function abraded(c: ProcessContext, e: EventOf<'surface.abraded'>): Change {
	return {
		cup: null,
		cupAhead: null,
		deviations: deviation(c, e, { key: 'abraded', given: { grit: e.grit, reason: e.reason } }, true)
	};
}

/** Abrading that a supervisor ordered by sending the work back needs no second decision. */
export function abradedAsOrdered(c: ProcessContext, e: EventOf<'surface.abraded'>): Change {
	const order = c.sentBack;
	const made = deviation(c, e, { key: 'abraded', given: { grit: e.grit, reason: e.reason } });
	const last = made.at(-1);
	if (last && order)
		last.decided = {
			accepted: true,
			redone: false,
			by: order.by,
			at: order.at,
			note: order.reason
		};
	return { cup: null, cupAhead: null, abraded: true, isWet: false, deviations: made };
}

/** Wet below: nothing goes on it till it is tested again, also where it was abraded and accepted. */
export function foundWet(c: ProcessContext): Change {
	return { tackPassed: false, isWet: c.abraded && isSince(c, 3) };
}
