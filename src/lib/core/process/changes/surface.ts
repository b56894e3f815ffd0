import { isSince, type ProcessContext } from '../context';
import type { EventOf, ProcessEvent } from '../events';
import { deviation } from './deviations';
import type { Change } from './work';

export function windowMissed(c: ProcessContext, e: ProcessEvent): Change {
	const cup = c.cup === null ? '' : ' The cup weighed for it was set aside.';
	return {
		cup: null,
		cupAhead: null,
		tackPassed: false,
		deviations: deviation(
			c,
			e,
			`The recoat window was missed: the surface is hard and takes no print.${cup}`
		)
	};
}

export function abraded(c: ProcessContext, e: EventOf<'surface.abraded'>): Change {
	return {
		cup: null,
		cupAhead: null,
		deviations: deviation(
			c,
			e,
			`The surface was abraded with ${e.grit}, wiped and dried: ${e.reason}`,
			true
		)
	};
}

/** Abrading that a supervisor ordered by sending the work back needs no second decision. */
export function abradedAsOrdered(c: ProcessContext, e: EventOf<'surface.abraded'>): Change {
	const order = c.sentBack;
	const made = deviation(
		c,
		e,
		`The surface was abraded with ${e.grit}, wiped and dried: ${e.reason}`
	);
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
