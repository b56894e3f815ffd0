import { PHASE_IDS, type PhaseId } from '../../content/vocabulary';
import type { ProcessContext } from '../context';
import type { EventOf, HoldId } from '../events';
import { HOLDS } from '../holds';
import { oneMoreCoat, oneMoreRound } from './more-coats';
import type { Change } from './work';

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
		trouble: null,
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
		thinnestMm: null
	};
}

/** The first round lies on the waxed glove, which has no window. */
function belowRound(c: ProcessContext): string | null {
	return c.roundIndex === 0 ? null : c.windowClosesAt;
}

export function redoCoat(c: ProcessContext): Change {
	return {
		trouble: null,
		cup: null,
		cupAhead: null,
		laidG: 0,
		cupsLaid: 0,
		tackPassed: false,
		windowClosesAt: c.phase !== 'shell' ? c.belowClosesAt : belowRound(c)
	};
}

export function troubleReported(c: ProcessContext, e: EventOf<'trouble.reported'>): Change {
	return {
		lastAt: e.at,
		// A trouble ends a pause: when it is mended, somebody is at work.
		pausedFor: null,
		trouble: { id: e.trouble, at: e.at, by: e.by, place: e.place ?? '', note: e.note },
		// A coat that dragged has not passed, whatever the fingertip said.
		...(e.trouble === 'recoat-too-early' ? { tackPassed: false } : {})
	};
}
