import { isSince, type ProcessContext } from '../context';
import { HOLDS } from '../holds';
import { is, rules } from './rule';

const isUnusable = (c: ProcessContext) => c.inspection?.verdict === 'reject';
const NOT_USABLE = 'the inspection found it not usable: reject the mold, or send it back';

/** Hold points, and what the inspection found. */
export const HOLD_RULES = rules({
	holdNamed: {
		holds: (c, e) => !('hold' in e) || e.hold === c.hold,
		says: (c) => `this mold waits at another hold point: ${c.hold ? HOLDS[c.hold].title : 'none'}`
	},
	holdMayReturnTo: {
		holds: (c, e) => is(e, 'hold.sentBack') && HOLDS[e.hold].sendBack.includes(e.to),
		says: (c) =>
			`from here it can go back to: ${c.hold ? HOLDS[c.hold].sendBack.join(', ') : 'nowhere'}`
	},
	/** A mold is accepted only as its inspection found it. */
	fitToAccept: {
		holds: (c) =>
			c.hold !== 'moldAccepted' ||
			!isSince(c, 2) ||
			c.inspection?.verdict === 'sound' ||
			(c.inspection?.verdict === 'needs repair' && c.inspection.isAccepted),
		says: (c) =>
			isUnusable(c)
				? NOT_USABLE
				: 'the inspection found it in need of repair: have it mended and inspected again, or decide that deviation first'
	},
	repairAsked: {
		holds: (c) => c.inspection?.verdict === 'needs repair' && !c.inspection.isAccepted,
		says: (c) => (isUnusable(c) ? NOT_USABLE : 'the inspection asks for no repair')
	}
});
