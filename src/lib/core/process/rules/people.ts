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
		says: (c, e) => `it is dated ${e.at}, before the last entry at ${c.lastAt}`
	},
	inHand: {
		holds: (c, e) => c.worker === null || c.worker === e.by,
		says: () => 'another person has this mold in hand: take it over first'
	},
	notInHand: {
		holds: (c, e) => c.worker !== e.by,
		says: () => 'you have this mold in hand already'
	},
	notOwnWork: {
		holds: (c, e) => !c.workers.includes(e.by),
		says: () => 'nobody signs their own work: ask a supervisor who has not worked on this mold'
	},
	briefed: {
		holds: (c, e) => unreadBriefings(c, e.by).length === 0,
		says: (c, e) => `read the briefings first: ${unreadBriefings(c, e.by).join(', ')}`
	}
});
