import type { Coat, ShellRound } from '../../plan/plan';
import { isSince, type ProcessContext } from '../context';
import type { EventOf } from '../events';
import { nextCoat } from './coats';
import { deviation, redone, sentForRedoing } from './deviations';
import type { Change } from './work';

/** The coats with one more like the last. */
export function oneMoreCoat(coats: Coat[]): Coat[] {
	const last = coats.at(-1);
	if (!last) return coats;
	const number = last.number + 1;
	return [
		...coats,
		{ ...last, id: `${last.kind}-${number}`, number, title: `Extra coat ${number}` }
	];
}

/** The shell rounds with one more like the last. */
export function oneMoreRound(rounds: ShellRound[]): ShellRound[] {
	const last = rounds.at(-1);
	if (!last) return rounds;
	const number = last.number + 1;
	return [...rounds, { ...last, id: `shell-${number}`, number, title: `Extra round ${number}` }];
}

export function coatAdded(c: ProcessContext, e: EventOf<'coat.added'>): Change {
	return {
		...nextCoat(c),
		coats: oneMoreCoat(c.coats),
		// The thin reading is answered by the coat itself once it is on; the supervisor sees it at the hold point.
		deviations: (isSince(c, 4) ? sentForRedoing : redone)(
			c.deviations,
			e,
			`A coat was added: ${e.reason}`
		)
	};
}

export function roundAdded(c: ProcessContext, e: EventOf<'coat.added'>): Change {
	return {
		rounds: oneMoreRound(c.rounds),
		deviations: deviation(c, e, { key: 'roundAdded', given: { reason: e.reason } })
	};
}
