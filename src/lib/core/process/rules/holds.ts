import { isSince, type ProcessContext } from '../context';
import { HOLDS } from '../holds';
import { is, rules } from './rule';

const isUnusable = (c: ProcessContext) => c.inspection?.verdict === 'reject';

/** Hold points, and what the inspection found. */
export const HOLD_RULES = rules({
	holdNamed: {
		holds: (c, e) => !('hold' in e) || e.hold === c.hold,
		says: (c, _e, { rules: said, titles }) =>
			said.anotherHold(c.hold ? titles.holds[c.hold] : said.none)
	},
	holdMayReturnTo: {
		holds: (c, e) => is(e, 'hold.sentBack') && HOLDS[e.hold].sendBack.includes(e.to),
		says: (c, _e, { rules: said, titles }) =>
			said.mayGoBackTo(
				c.hold ? HOLDS[c.hold].sendBack.map((to) => titles.phases[to]).join(', ') : said.nowhere
			)
	},
	/** A mold is accepted only as its inspection found it. */
	fitToAccept: {
		holds: (c) =>
			c.hold !== 'moldAccepted' ||
			!isSince(c, 2) ||
			c.inspection?.verdict === 'sound' ||
			(c.inspection?.verdict === 'needs repair' && c.inspection.isAccepted),
		says: (c, _e, { rules: said }) => (isUnusable(c) ? said.notUsable : said.needsRepair)
	},
	repairAsked: {
		holds: (c) => c.inspection?.verdict === 'needs repair' && !c.inspection.isAccepted,
		says: (c, _e, { rules: said }) => (isUnusable(c) ? said.notUsable : said.noRepairAsked)
	}
});
