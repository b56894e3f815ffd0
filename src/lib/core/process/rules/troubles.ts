import { isSince } from '../context';
import {
	needsSupervisor,
	answersAsked,
	isHurting,
	isOfPeople,
	TROUBLES,
	waysBackFrom
} from '../troubles';
import { is, rules } from './rule';

/** What is reported, and what opens the way back. */
export const TROUBLE_RULES = rules({
	troubleFitsPhase: {
		holds: (c, e) => is(e, 'trouble.reported') && TROUBLES[e.trouble].phases.includes(c.phase),
		says: (_c, _e, { rules: said }) => said.troubleElsewhere
	},
	/** What hurts is told in a word, and helped; anything else is described. */
	troubleDescribed: {
		holds: (_c, e) => is(e, 'trouble.reported') && (!!e.note || isHurting(e.trouble)),
		says: (_c, _e, { rules: said }) => said.describeIt
	},
	/** A second trouble may come to the first; the same one is there already. */
	troubleIsAnother: {
		holds: (c, e) =>
			is(e, 'trouble.reported') &&
			![c.trouble, ...c.troublesBefore].some((met) => met?.id === e.trouble),
		says: (_c, _e, { rules: said }) => said.reportedAlready
	},
	troubleMayReturnTo: {
		holds: (c, e) =>
			(is(e, 'trouble.mended') || is(e, 'trouble.decided')) && waysBackFrom(c).includes(e.wayBack),
		says: (c, _e, { rules: said }) => said.waysBack(waysBackFrom(c).join(', '))
	},
	troubleMendedByAnother: {
		holds: (c, e) =>
			c.trouble === null ||
			isSince(c, 5) ||
			!TROUBLES[c.trouble.id].needsAnother ||
			!c.workers.includes(e.by),
		says: (_c, _e, { rules: said }) => said.anotherSays
	},
	/** What only a supervisor ends is ended on the signing page. */
	troubleMendedByCrew: {
		holds: (c) =>
			c.trouble === null || !isSince(c, 5) || !needsSupervisor(c.trouble.id, c.plan.processVersion),
		says: (_c, _e, { rules: said }) => said.supervisorDecides
	},
	/** From version 6 on nobody hurt is left, and nothing hot, by a note alone. */
	troubleAnswered: {
		holds: (c, e) =>
			c.trouble === null ||
			!isSince(c, 6) ||
			!is(e, 'trouble.decided') ||
			answersAsked(c.trouble.id).every((name) => e[name] !== undefined),
		says: (c, e, { rules: said }) => {
			if (!c.trouble || !isOfPeople(c.trouble.id)) return said.smokeFirst;
			const missing = is(e, 'trouble.decided')
				? answersAsked(c.trouble.id).filter((name) => e[name] === undefined)
				: [];
			return missing.join() === 'aired' ? said.airFirst : said.bodyFirst;
		}
	},
	/** The cup that smokes in somebody's hand is not laid any more. */
	smokingCupAside: {
		holds: (c) =>
			c.trouble?.id !== 'cup-smoke' || c.isCupAside || c.cup === null || c.cup.mixedAt === null,
		says: (_c, _e, { rules: said }) => said.asideFirst
	},
	testAsked: {
		holds: (c) => c.trouble !== null && TROUBLES[c.trouble.id].needsTest,
		says: (_c, _e, { rules: said }) => said.noTestAsked
	},
	/** What foams or does not cure will do so again: a test away from the mold comes first. */
	testedGood: {
		holds: (c) =>
			c.trouble === null ||
			!isSince(c, 3) ||
			!TROUBLES[c.trouble.id].needsTest ||
			c.trouble.test === 'good',
		says: (c, _e, { rules: said }) => (c.trouble?.test === 'bad' ? said.testWasBad : said.testFirst)
	}
});
