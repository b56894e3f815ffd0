import type { ProcessContext } from '../context';
import { secondsBetween } from '../instant';
import { rules } from './rule';

function unreadBriefings(context: ProcessContext, person: string): string[] {
	const read = context.briefingsRead[person] ?? [];
	return context.plan.briefings.filter((slug) => !read.includes(slug));
}

/** Who may do it, in which order of time. */
export const PEOPLE = rules({
	/** The log is in order of time. */
	afterLast: {
		holds: (c, e) => secondsBetween(c.lastAt, e.at) >= 0,
		says: (c, e, { rules: said }) => said.datedBefore({ at: e.at, lastAt: c.lastAt })
	},
	inHand: {
		holds: (c, e) => c.worker === null || c.worker === e.by,
		says: (_c, _e, { rules: said }) => said.othersHands
	},
	notInHand: {
		holds: (c, e) => c.worker !== e.by,
		says: (_c, _e, { rules: said }) => said.inHandAlready
	},
	notOwnWork: {
		holds: (c, e) => !c.workers.includes(e.by),
		says: (_c, _e, { rules: said }) => said.ownWork
	},
	briefed: {
		holds: (c, e) => unreadBriefings(c, e.by).length === 0,
		says: (c, e, { rules: said }) => said.readFirst(unreadBriefings(c, e.by).join(', '))
	}
});
