import { isSince } from '../context';
import { TROUBLES, waysBackFrom } from '../troubles';
import { is, rules } from './rule';

/** What is reported, and what opens the way back. */
export const TROUBLE_RULES = rules({
	troubleFitsPhase: {
		holds: (c, e) => is(e, 'trouble.reported') && TROUBLES[e.trouble].phases.includes(c.phase),
		says: () => 'that trouble does not belong to this phase'
	},
	troubleMayReturnTo: {
		holds: (c, e) => is(e, 'trouble.mended') && waysBackFrom(c).includes(e.wayBack),
		says: (c) => `from this trouble the ways back are: ${waysBackFrom(c).join(', ')}`
	},
	troubleMendedByAnother: {
		holds: (c, e) =>
			c.trouble === null || !TROUBLES[c.trouble.id].needsAnother || !c.workers.includes(e.by),
		says: () => 'a supervisor who has not worked on this mold must say that work goes on'
	},
	testAsked: {
		holds: (c) => c.trouble !== null && TROUBLES[c.trouble.id].needsTest,
		says: () => 'this trouble asks for no test cup or patch'
	},
	/** What foams or does not cure will do so again: a test away from the mold comes first. */
	testedGood: {
		holds: (c) =>
			c.trouble === null ||
			!isSince(c, 3) ||
			!TROUBLES[c.trouble.id].needsTest ||
			c.trouble.test === 'good',
		says: (c) =>
			c.trouble?.test === 'bad'
				? 'the last test was bad: the stop stands. Find the cause, then test again'
				: 'make a test cup or a test patch away from the mold first, and enter what it shows'
	}
});
