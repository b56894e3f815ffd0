import { isSince } from '../context';
import { needsSupervisor, OF_PEOPLE, TROUBLES, waysBackFrom } from '../troubles';
import { is, rules } from './rule';

/** What is reported, and what opens the way back. */
export const TROUBLE_RULES = rules({
	troubleFitsPhase: {
		holds: (c, e) => is(e, 'trouble.reported') && TROUBLES[e.trouble].phases.includes(c.phase),
		says: () => 'that trouble does not belong to this phase'
	},
	/** What hurts is told in a word, and helped; anything else is described. */
	troubleDescribed: {
		holds: (_c, e) => is(e, 'trouble.reported') && (!!e.note || OF_PEOPLE.includes(e.trouble)),
		says: () => 'say in a few words what you see'
	},
	/** A second trouble may come to the first; the same one is there already. */
	troubleIsAnother: {
		holds: (c, e) =>
			is(e, 'trouble.reported') &&
			![c.trouble, ...c.troublesBefore].some((met) => met?.id === e.trouble),
		says: () => 'this trouble is reported already, and not ended yet'
	},
	troubleMayReturnTo: {
		holds: (c, e) =>
			(is(e, 'trouble.mended') || is(e, 'trouble.decided')) && waysBackFrom(c).includes(e.wayBack),
		says: (c) => `from this trouble the ways back are: ${waysBackFrom(c).join(', ')}`
	},
	troubleMendedByAnother: {
		holds: (c, e) =>
			c.trouble === null ||
			isSince(c, 5) ||
			!TROUBLES[c.trouble.id].needsAnother ||
			!c.workers.includes(e.by),
		says: () => 'a supervisor who has not worked on this mold must say that work goes on'
	},
	/** What only a supervisor ends is ended on the signing page. */
	troubleMendedByCrew: {
		holds: (c) =>
			c.trouble === null || !isSince(c, 5) || !needsSupervisor(c.trouble.id, c.plan.processVersion),
		says: () =>
			'a supervisor who has not worked on this mold decides how it goes on, with a PIN, on the signing page'
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
