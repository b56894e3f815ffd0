import { PHASE_IDS, type PhaseId } from '../../content/vocabulary';
import { isLaying, isSince, type ProcessContext, type Trouble } from '../context';
import type { EventOf, HoldId } from '../events';
import { HOLDS } from '../holds';
import { secondsBetween } from '../instant';
import { PHASE_TITLES } from '../titles';
import { inTurn, isOfMold } from '../troubles';
import { redone, sentForRedoing } from './deviations';
import { enteredAnew } from './taken-back';
import { oneMoreCoat, oneMoreRound } from './more-coats';
import type { Change } from './work';

/** Both ways to end a trouble: by the crew, or by a supervisor's word. */
type Mended = EventOf<'trouble.mended'> | EventOf<'trouble.decided'>;

/** The trouble in view is ended: the one met before it, if any, is the one that stops the work. */
export function nextTrouble({ troublesBefore }: ProcessContext): Change {
	return {
		trouble: troublesBefore.at(-1) ?? null,
		troublesBefore: troublesBefore.slice(0, -1),
		isCupAside: false
	};
}

/** The context as it must be when work goes back to `phase`: what comes after it is not done. */
export function backTo(c: ProcessContext, phase: PhaseId): Change {
	const at = PHASE_IDS.indexOf(phase);
	const kept = Object.entries(c.signatures).filter(
		([hold]) => PHASE_IDS.indexOf(HOLDS[hold as HoldId].phase) < at
	);
	const clean: Change = {
		cup: null,
		cupAhead: null,
		laidG: 0,
		cupsLaid: 0,
		hold: null,
		holdRequestedAt: null,
		waitSinceAt: null,
		isWet: false,
		inspection: null,
		signatures: Object.fromEntries(kept)
	};
	if (phase === 'build') {
		return {
			...clean,
			coats: oneMoreCoat(c.coats),
			coatIndex: c.coats.length,
			tackPassed: false,
			abraded: false
		};
	}
	if (phase === 'shell') {
		return {
			...clean,
			rounds: oneMoreRound(c.rounds),
			roundIndex: c.rounds.length,
			abraded: false
		};
	}
	if (at > PHASE_IDS.indexOf('build')) return clean;
	return {
		...clean,
		...(at <= PHASE_IDS.indexOf('release') ? { waxCoats: 0, filmPasses: 0 } : {}),
		coats: c.plan.coats,
		coatIndex: 0,
		finishedAt: null,
		windowClosesAt: null,
		belowClosesAt: null,
		tackPassed: false,
		abraded: false,
		surfaces: [],
		thinnestMm: null,
		troublesMet: []
	};
}

/** The first round lies on the waxed glove, which has no window. */
function belowRound(c: ProcessContext): string | null {
	return c.roundIndex === 0 ? null : c.windowClosesAt;
}

/**
 * The coat or round at work is laid again. A decision that was waited for is no longer, once that is
 * done: what it was about is gone. This is no way round it, since the test and the window of the surface below count as
 * before, and abrading that surface anew asks for a decision anew.
 */
export function redoCoat(c: ProcessContext, e: Mended): Change {
	return {
		lastAt: e.at,
		deviations: isSince(c, 3)
			? sentForRedoing(c.deviations, e, `To be laid again: ${e.how}`)
			: redone(c.deviations, e, `Laid again: ${e.how}`),
		...nextTrouble(c),
		cup: null,
		cupAhead: null,
		laidG: 0,
		cupsLaid: 0,
		tackPassed: false,
		windowClosesAt: c.phase !== 'shell' ? c.belowClosesAt : belowRound(c),
		...(isSince(c, 3) ? { abraded: false, isWet: false, ...surfaceBelow(c, e.at) } : {})
	};
}

/**
 * The surface that comes to light when a coat is taken off. After a passed test the next coat is at
 * work but nothing of it is laid: then it is the last one laid that comes off. Past the window it is not:
 * that would be a way round abrading.
 */
function surfaceBelow(c: ProcessContext, at: string): Change {
	if (c.phase === 'shell') return {};
	const isBare = c.laidG === 0 && !isLaying(c) && c.coatIndex > 0;
	const isOpen = c.windowClosesAt === null || secondsBetween(at, c.windowClosesAt) >= 0;
	const coatIndex = isBare && isOpen && c.tackPassed ? c.coatIndex - 1 : c.coatIndex;
	const below = c.surfaces[coatIndex - 1] ?? { finishedAt: null, closesAt: null };
	return {
		coatIndex,
		phase: c.coats[coatIndex]?.kind ?? c.phase,
		finishedAt: below.finishedAt,
		windowClosesAt: below.closesAt,
		belowClosesAt: below.closesAt
	};
}

/** Begun anew from further back: what was waited for, or ordered by a supervisor, does not count for it. */
export function begunAgain(c: ProcessContext, e: Mended, phase: PhaseId): Change {
	return {
		...backTo(c, phase),
		...nextTrouble(c),
		sentBack: null,
		lastAt: e.at,
		deviations: (isSince(c, 3) ? sentForRedoing : redone)(
			c.deviations,
			e,
			`Begun again from "${PHASE_TITLES[phase]}": ${e.how}`
		)
	};
}

export function sentBack(c: ProcessContext, e: EventOf<'hold.sentBack'>): Change {
	const { hold, to, reason, by, at } = e;
	return {
		...backTo(c, to),
		lastAt: at,
		sentBack: { hold, to, reason, by, at },
		...(hold === 'moldAccepted'
			? {
					deviations: (isSince(c, 3) ? sentForRedoing : redone)(
						c.deviations,
						e,
						`Sent back to "${PHASE_TITLES[to]}": ${reason}`
					)
				}
			: {})
	};
}

export function troubleReported(c: ProcessContext, e: EventOf<'trouble.reported'>): Change {
	const met = { id: e.trouble, at: e.at, by: e.by, place: e.place ?? '', note: e.note ?? '' };
	const before = [...c.troublesBefore, ...(c.trouble ? [c.trouble] : [])];
	const open = inTurn<Trouble>([...before, { ...met, test: null }], c.plan.processVersion);
	return {
		lastAt: e.at,
		// A trouble ends a pause: when it is mended, somebody is at work.
		pausedFor: null,
		trouble: open.at(-1) ?? null,
		troublesBefore: open.slice(0, -1),
		troublesMet: [...c.troublesMet, met],
		// A coat that dragged has not passed, whatever the fingertip said.
		...(e.trouble === 'recoat-too-early' ? { tackPassed: false } : {}),
		...(e.trouble === 'recoat-missed' && isSince(c, 3) ? shutWindow(c, e.at) : {}),
		...(isOfMold(e.trouble) && isSince(c, 3) ? uninspected(c) : {})
	};
}

/** What the inspection found is true no longer, and nobody is asked to sign for it. */
function uninspected({ hold }: ProcessContext): Change {
	if (hold !== 'moldAccepted') return {};
	return { inspection: null, hold: null, holdRequestedAt: null };
}

/** Found hard before the sheet's clock said so: the window is shut from then on. */
function shutWindow(c: ProcessContext, at: string): Change {
	if (c.windowClosesAt === null) return {};
	const isLater = secondsBetween(at, c.windowClosesAt) > 0;
	const isBare = c.phase !== 'shell' && c.laidG === 0;
	return {
		tackPassed: false,
		abraded: false,
		...(isLater ? { windowClosesAt: at } : {}),
		// It stays shut below a coat that is taken off later.
		...(isLater && isBare
			? {
					belowClosesAt: at,
					surfaces: c.surfaces.map((surface, i) =>
						i === c.coatIndex - 1 ? { ...surface, closesAt: at } : surface
					)
				}
			: {})
	};
}

export function tested(c: ProcessContext, e: EventOf<'test.judged'>): Change {
	const found = enteredAnew(c, e);
	return { lastAt: e.at, trouble: c.trouble && { ...c.trouble, test: e.result }, ...found };
}
