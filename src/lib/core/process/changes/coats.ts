import { batchAtWork, coatAtWork, isSince, type Deviation, type ProcessContext } from '../context';
import type { Said } from '../deviation-words';
import { earlyTest, type EarlyTest } from '../early-test';
import type { EventOf, ProcessEvent } from '../events';
import { addSeconds } from '../instant';
import { layersPlanned, layersShortOf } from '../layers';
import { deviation, redoneUnderWay } from './deviations';
import type { Change } from './work';

export function coatFinished(c: ProcessContext, e: EventOf<'coat.finished'>): Change {
	const coat = coatAtWork(c);
	// The material cures from when it was laid, whenever the end of the coat is entered: the last place is
	// ready last, and the first one is the first that no longer bonds.
	const lastAt = c.laidAt ?? e.at;
	const firstAt = isSince(c, 5) ? (c.firstLaidAt ?? lastAt) : lastAt;
	return {
		finishedAt: isSince(c, 5) ? lastAt : e.at,
		windowClosesAt: coat ? addSeconds(firstAt, coat.windowClosesS) : null,
		tackPassed: false,
		abraded: false,
		isWet: false,
		deviations: endNoted(c, e, {
			key: 'short',
			given: { title: coat?.title ?? 'Coat', reason: e.shortReason ?? '' }
		})
	};
}

/** More than planned is noted from this part of a coat's or round's mass on; common practice, no source. */
const OVER_FRACTION = 0.1;

/** What is worth a word when a coat or round ends, and what it answers by being laid again. */
function endNoted(c: ProcessContext, e: EventOf<'coat.finished'>, short: Said): Deviation[] {
	const batch = batchAtWork(c);
	const after = isSince(c, 3)
		? redoneUnderWay(
				c.deviations,
				e,
				`${isAdded(c) ? 'Added' : 'Laid again'}: ${batch?.title ?? 'the coat'}`
			)
		: c.deviations;
	const over: Said[] =
		batch && isSince(c, 3) && c.laidG > (1 + OVER_FRACTION) * batch.massG
			? [
					{
						key: 'over',
						given: {
							title: batch.title,
							laidG: Math.round(c.laidG),
							plannedG: Math.round(batch.massG)
						}
					}
				]
			: [];
	return [...(e.shortReason ? [short] : []), ...over].reduce(
		(deviations, said) => deviation({ ...c, deviations }, e, said),
		after
	);
}

/** Whether the coat or round at work is one more than planned. */
function isAdded(c: ProcessContext): boolean {
	if (!isSince(c, 4)) return false;
	return c.phase === 'shell'
		? c.roundIndex >= c.plan.shell.rounds.length
		: c.coatIndex >= c.plan.coats.length;
}

export function notBrushedBack(c: ProcessContext, e: ProcessEvent): Change {
	return { deviations: deviation(c, e, { key: 'notBrushedBack', given: undefined }) };
}

/** A test that came out well sooner than it can have: it is written down, and made again. */
export function foundTooSoon(c: ProcessContext, e: EventOf<'tack.tested'>): Change {
	const early = earlyTest(c, e.at);
	return {
		tackPassed: false,
		...(early ? { deviations: deviation(c, e, tooSoon(early)) } : {})
	};
}

/** A passed test: notes one that came far too early to be believed unseen. */
export function tackFound(c: ProcessContext, e: EventOf<'tack.tested'>): Change {
	const early = earlyTest(c, e.at);
	return {
		// A hard last coat may be measured; a coat added to it needs a print, or abrading.
		tackPassed: e.result === 'almost tack-free',
		isWet: false,
		...(early ? { deviations: deviation(c, e, farTooEarly(early)) } : {})
	};
}

const tooSoon = ({ title, tookMin, soonestMin }: EarlyTest): Said => ({
	key: 'testedTooSoon',
	given: { title, tookMin, soonestMin }
});
const farTooEarly = ({ title, tookMin, expectedMin }: EarlyTest): Said => ({
	key: 'testedEarly',
	given: { title, tookMin, expectedMin }
});

export function nextCoat(c: ProcessContext): Change {
	return {
		coatIndex: c.coatIndex + 1,
		laidG: 0,
		cupsLaid: 0,
		cup: null,
		cupAhead: null,
		belowClosesAt: c.windowClosesAt,
		surfaces: [
			...c.surfaces.slice(0, c.coatIndex),
			{ finishedAt: c.finishedAt, closesAt: c.windowClosesAt }
		]
	};
}

export function nextRound(c: ProcessContext, e: EventOf<'coat.finished'>): Change {
	const round = c.rounds[c.roundIndex];
	const title = round?.title ?? 'Shell';
	const reason = e.shortReason ?? '';
	const short: Said =
		layersShortOf(c, e) > 0
			? {
					key: 'fewLayers',
					given: { title, laid: e.layersLaid ?? 0, planned: layersPlanned(c), reason }
				}
			: { key: 'short', given: { title, reason } };
	return {
		roundIndex: c.roundIndex + 1,
		laidG: 0,
		cupsLaid: 0,
		cup: null,
		cupAhead: null,
		deviations: endNoted(c, e, short)
	};
}
