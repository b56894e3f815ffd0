import { isSince } from '../context';
import { placesToLookAt } from '../places-to-look-at';
import { is, rules } from './rule';

/** Marking and inspecting. */
export const FINISHING_RULES = rules({
	/** An uneven parting line keys glove and shell by itself; a plain one needs keys. */
	keysNamed: {
		holds: (c, e) =>
			!isSince(c, 3) ||
			(is(e, 'mold.marked') &&
				(e.partingLine === 'uneven' || (e.partingLine === 'plain' && !!e.keys))),
		says: (_c, e) =>
			is(e, 'mold.marked') && e.partingLine === 'plain'
				? 'a plain parting line does not key itself: drill or add keys, and say which and where'
				: 'say whether the parting line is uneven or plain'
	},
	mayInspectAnew: {
		holds: (c) => isSince(c, 3),
		says: () => 'it is inspected already: ask for the signature'
	},
	/** Where this mold had trouble is looked at, place by place. */
	placesLookedAt: {
		holds: (c, e) =>
			is(e, 'mold.inspected') && placesToLookAt(c).every(({ key }) => e.lookedAt?.[key] === true),
		says: (c, e) => {
			const looked = is(e, 'mold.inspected') ? (e.lookedAt ?? {}) : {};
			const left = placesToLookAt(c).filter(({ key }) => looked[key] !== true);
			return `look where this mold had trouble, and tick it: ${left.map(({ text }) => text).join('; ')}`;
		}
	}
});
