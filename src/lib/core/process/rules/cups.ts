import { batchAtWork, cupInPreparation, isLaying, isSince, mixersBeside } from '../context';
import { cupDeviationFraction, isOnRatio, missingParts, strangeParts } from '../cup-check';
import { cupAfter } from '../next-cup';
import { is, rules } from './rule';

/** The cup at the scale, and the next one beside it. */
export const CUPS = rules({
	knownParts: {
		holds: (c, e) => {
			const batch = batchAtWork(c);
			return is(e, 'cup.weighed') && batch !== null && strangeParts(batch, e.massesG).length === 0;
		},
		says: (c) =>
			`this material's parts are: ${
				batchAtWork(c)
					?.fractions.map((f) => f.part)
					.join(', ') ?? ''
			}`
	},
	somethingWeighed: {
		holds: (_c, e) => is(e, 'cup.weighed') && Object.values(e.massesG).some((massG) => massG > 0),
		says: () => 'the cup is empty: enter what the scale showed'
	},
	onRatio: {
		holds: (c) => {
			const batch = batchAtWork(c);
			const cup = cupInPreparation(c);
			return batch !== null && cup !== null && isOnRatio(batch, cup.massesG);
		},
		says: (c) => {
			const batch = batchAtWork(c);
			const cup = cupInPreparation(c);
			if (!batch || !cup) return 'weigh the cup first';
			const missing = missingParts(batch, cup.massesG);
			if (missing.length > 0) return `part ${missing.join(', ')} is not in the cup yet`;
			const off = (cupDeviationFraction(batch, cup.massesG) ?? 0) * 100;
			return `the cup is ${off.toFixed(1)} % off ratio, more than ${(batch.toleranceFraction * 100).toFixed(1)} %: correct it by adding the other part`;
		}
	},
	/** More of this coat or round follows the cup that is being laid. */
	anotherCup: {
		holds: (c) => cupAfter(c) !== null,
		says: () => 'the cup in hand is the last of this coat: lay it first'
	},
	nextUnmixed: {
		holds: (c) => c.cupAhead === null || c.cupAhead.mixedAt === null,
		says: () => 'the next cup is mixed already: lay the one in hand, then that one'
	},
	crewMixes: {
		holds: (c, e) => c.plan.people >= 2 && (!isSince(c, 3) || mixersBeside(c, e.by).length > 0),
		says: (c) =>
			c.plan.people < 2
				? 'one person cannot lay and mix at once: the plan has one at work, so lay this cup first'
				: 'one person cannot lay and mix at once: the second one reads the briefings first, under their own name'
	},
	/** The second person has read the briefings, and counts among those who worked on the mold. */
	mixerNamed: {
		holds: (c, e) => {
			if (!is(e, 'cup.mixed') || !isSince(c, 3)) return true;
			if (e.mixedBy === undefined) return !isLaying(c);
			return mixersBeside(c, e.by).includes(e.mixedBy);
		},
		says: () =>
			'say who mixes it while you lay: somebody else, who has read the briefings of this mold'
	},
	cupThere: {
		holds: (c, e) => !is(e, 'cup.discarded') || e.cup !== 'next' || c.cupAhead !== null,
		says: () => 'no next cup is prepared'
	}
});
