import { batchAtWork, cupInPreparation, isLaying, isSince, mixersBeside } from '../context';
import { cupDeviationFraction, isOnRatio, missingParts, strangeParts } from '../cup-check';
import { largestCupMl, massInCup, volumeInCup } from '../cup-mass';
import { isNextOverdue, isOverdue, potLifeEndsAt } from '../cup-life';
import { cupAfter } from '../next-cup';
import { is, rules } from './rule';

/** The cup at the scale, and the next one beside it. */
export const CUPS = rules({
	knownParts: {
		holds: (c, e) => {
			const batch = batchAtWork(c);
			return is(e, 'cup.weighed') && batch !== null && strangeParts(batch, e.massesG).length === 0;
		},
		says: (c, _e, { rules: said }) =>
			said.knownParts(
				batchAtWork(c)
					?.fractions.map((f) => f.part)
					.join(', ') ?? ''
			)
	},
	somethingWeighed: {
		holds: (_c, e) => is(e, 'cup.weighed') && Object.values(e.massesG).some((massG) => massG > 0),
		says: (_c, _e, { rules: said }) => said.somethingWeighed
	},
	/** From version 6 on: what no cup of the shop holds to its brim was not weighed. */
	fitsCup: {
		holds: (c, e) => {
			const batch = batchAtWork(c);
			if (!is(e, 'cup.weighed') || !batch || !isSince(c, 6)) return true;
			// Where no density is known, the volume is none.
			return !(volumeInCup(c.plan, batch, e.massesG) > largestCupMl(c));
		},
		says: (c, e, { rules: said }) => {
			const batch = batchAtWork(c);
			const massesG = is(e, 'cup.weighed') ? e.massesG : {};
			return said.fitsNoCup({
				massG: Math.round(massInCup(massesG)),
				volumeMl: batch ? Math.round(volumeInCup(c.plan, batch, massesG)) : 0,
				largestMl: largestCupMl(c)
			});
		}
	},
	/** From version 6 on: a cup whose parts met too long ago is set aside, not weighed on and not mixed. */
	partsInTime: {
		holds: (c, e) => !isSince(c, 6) || !(isLaying(c) ? isNextOverdue(c, e.at) : isOverdue(c, e.at)),
		says: (c, _e, { rules: said }) =>
			said.partsTooLong(potLifeEndsAt(c, cupInPreparation(c)) ?? c.lastAt)
	},
	onRatio: {
		holds: (c) => {
			const batch = batchAtWork(c);
			const cup = cupInPreparation(c);
			return batch !== null && cup !== null && isOnRatio(batch, cup.massesG);
		},
		says: (c, _e, { rules: said }) => {
			const batch = batchAtWork(c);
			const cup = cupInPreparation(c);
			if (!batch || !cup) return said.weighFirst;
			const missing = missingParts(batch, cup.massesG);
			if (missing.length > 0) return said.partMissing(missing.join(', '));
			const off = (cupDeviationFraction(batch, cup.massesG) ?? 0) * 100;
			return said.offRatio({
				offPct: off.toFixed(1),
				mostPct: (batch.toleranceFraction * 100).toFixed(1)
			});
		}
	},
	/** More of this coat or round follows the cup that is being laid. */
	anotherCup: {
		holds: (c) => cupAfter(c) !== null,
		says: (_c, _e, { rules: said }) => said.lastCup
	},
	nextUnmixed: {
		holds: (c) => c.cupAhead === null || c.cupAhead.mixedAt === null,
		says: (_c, _e, { rules: said }) => said.nextMixed
	},
	crewMixes: {
		holds: (c, e) => c.plan.people >= 2 && (!isSince(c, 3) || mixersBeside(c, e.by).length > 0),
		says: (c, _e, { rules: said }) => (c.plan.people < 2 ? said.oneAtWork : said.secondReadsFirst)
	},
	/** The second person has read the briefings, and counts among those who worked on the mold. */
	mixerNamed: {
		holds: (c, e) => {
			if (!is(e, 'cup.mixed') || !isSince(c, 3)) return true;
			if (e.mixedBy === undefined) return !isLaying(c);
			return mixersBeside(c, e.by).includes(e.mixedBy);
		},
		says: (_c, _e, { rules: said }) => said.mixerNamed
	},
	cupInHand: {
		holds: (c, e) => (is(e, 'cup.discarded') && e.cup === 'next') || c.cup !== null,
		says: (_c, _e, { rules: said }) => said.noCup
	},
	cupThere: {
		holds: (c, e) => !is(e, 'cup.discarded') || e.cup !== 'next' || c.cupAhead !== null,
		says: (_c, _e, { rules: said }) => said.noNextCup
	}
});
