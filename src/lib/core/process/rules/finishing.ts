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
		says: (_c, e, { rules: said }) =>
			is(e, 'mold.marked') && e.partingLine === 'plain' ? said.plainLine : said.sayLine
	},
	mayInspectAnew: {
		holds: (c) => isSince(c, 3),
		says: (_c, _e, { rules: said }) => said.inspected
	},
	/** Where this mold had trouble is looked at, place by place. */
	placesLookedAt: {
		holds: (c, e) =>
			is(e, 'mold.inspected') && placesToLookAt(c).every(({ key }) => e.lookedAt?.[key] === true),
		says: (c, e, w) => {
			const looked = is(e, 'mold.inspected') ? (e.lookedAt ?? {}) : {};
			const left = placesToLookAt(c, w).filter(({ key }) => looked[key] !== true);
			return w.rules.lookWhere(left.map(({ text }) => text).join('; '));
		}
	}
});
