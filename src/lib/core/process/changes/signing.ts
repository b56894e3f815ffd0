import type { ProcessContext } from '../context';
import type { EventOf } from '../events';
import { HOLDS } from '../holds';
import { decideAll } from './deviations';
import type { Change } from './work';

function freshShell(c: ProcessContext): Change {
	return {
		rounds: c.plan.shell.rounds,
		roundIndex: 0,
		cup: null,
		cupAhead: null,
		laidG: 0,
		cupsLaid: 0,
		windowClosesAt: null,
		abraded: false
	};
}

export function signed(c: ProcessContext, e: EventOf<'hold.signed'>): Change {
	const decision = {
		accepted: true,
		redone: false,
		by: e.by,
		at: e.at,
		note: `Signed at "${HOLDS[e.hold].title}"`
	};
	return {
		lastAt: e.at,
		signatures: { ...c.signatures, [e.hold]: { by: e.by, at: e.at } },
		hold: null,
		holdRequestedAt: null,
		sentBack: null,
		deviations: decideAll(c.deviations, decision),
		...(e.hold === 'readyForShell' ? freshShell(c) : {})
	};
}
