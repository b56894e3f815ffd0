import { batchAtWork, coatAtWork, type ProcessContext } from './context';
import { cupClosesAt } from './cup-life';
import { addSeconds } from './instant';
import { nextCup } from './next-cup';
import type { Window } from './step';

/** Gelling is over by this part of the way to almost tack-free: past it, brushing drags; common practice, no source. */
const BRUSHABLE_FRACTION = 0.75;

/** The wait that runs in a state, or null when nothing is waited for. */
export function windowAt(path: string, c: ProcessContext): Window | null {
	const coat = coatAtWork(c);
	const since = (
		label: string,
		sinceAt: string | null,
		opensS: number,
		closesAt: string | null,
		after: string
	): Window | null =>
		sinceAt === null
			? null
			: { label, sinceAt, opensAt: addSeconds(sinceAt, opensS), closesAt, after };

	switch (path) {
		case 'sealing.drying':
			return since('Sealer dries', c.waitSinceAt, c.plan.release.sealerDryS ?? 0, null, '');
		case 'release.hazing':
			return since('Wax hazes', c.waitSinceAt, c.plan.release.waxHazeS, null, '');
		case 'release.drying':
			return since('Film dries', c.waitSinceAt, c.plan.release.filmDryS, null, '');
		case 'coating.mixed':
		case 'shell.mixed':
			return workingWindow(c);
		case 'coating.brushing':
			return since(
				'It gels',
				c.finishedAt,
				coat?.brushBackS ?? 0,
				c.finishedAt && coat ? addSeconds(c.finishedAt, BRUSHABLE_FRACTION * coat.tackTestS) : null,
				'Past it the brush drags: leave it, and note it.'
			);
		case 'coating.curing':
			return curingWindow(c);
		case 'coating.weighing':
		case 'coating.weighed':
		case 'shell.weighing':
		case 'shell.weighed':
			return openWindow(c);
		case 'troubled':
		case 'paused':
			return workingWindow(c) ?? heldWindow(c);
		case 'gloveCure':
			return since('Glove cures', c.finishedAt, c.plan.gloveCure.testS, null, '');
		case 'shellCure':
			return since('Shell cures', c.finishedAt, c.plan.shellCure.testS, null, '');
		default:
			return null;
	}
}

function workingWindow(c: ProcessContext): Window | null {
	const batch = batchAtWork(c);
	const mixedAt = c.cup?.mixedAt;
	if (!batch || !mixedAt) return null;
	return {
		label: 'Working time of this cup',
		sinceAt: mixedAt,
		opensAt: mixedAt,
		closesAt: cupClosesAt(c, c.cup),
		after: 'Past it: stop, do not thin, set the cup aside in the extraction.'
	};
}

/** The surface below is ready now, until its window closes. */
function openWindow(c: ProcessContext): Window | null {
	const isBare = c.phase === 'shell' || c.laidG === 0 || nextCup(c) !== null;
	const counts = isBare && c.windowClosesAt;
	if (!counts || c.abraded || !c.finishedAt) return null;
	return {
		label: c.laidG > 0 && c.phase !== 'shell' ? 'Recoat window, where still bare' : 'Recoat window',
		sinceAt: c.finishedAt,
		opensAt: c.finishedAt,
		closesAt: counts,
		after: 'Past it the next coat does not bond: abrade and wipe.'
	};
}

/** The coat just laid: from when it can be tested, till the next one no longer bonds. */
function curingWindow(c: ProcessContext): Window | null {
	const { finishedAt } = c;
	if (finishedAt === null) return null;
	return {
		label: 'Recoat window',
		sinceAt: finishedAt,
		opensAt: addSeconds(finishedAt, coatAtWork(c)?.tackTestS ?? 0),
		closesAt: c.coatIndex + 1 < c.coats.length ? c.windowClosesAt : null,
		after: 'Past it the next coat does not bond: abrade and wipe.'
	};
}

/** The surface goes on curing whatever stopped the work. */
function heldWindow(c: ProcessContext): Window | null {
	const isCoating = c.phase === 'detail' || c.phase === 'build';
	if (isCoating && c.laidG > 0 && isFinished(c)) return curingWindow(c);
	return ['detail', 'build', 'shell'].includes(c.phase) ? openWindow(c) : null;
}

/** The coat at work is complete: nothing was laid after its end. */
function isFinished({ finishedAt, laidAt }: ProcessContext): boolean {
	return finishedAt !== null && laidAt !== null && finishedAt >= laidAt;
}

/** The second clock of a state: the surface below, while a cup is laid on what of it is still bare. */
export function windowBeside(path: string, c: ProcessContext): Window | null {
	const isLaying = c.cup?.mixedAt != null;
	const isAtWork = ['coating.mixed', 'shell.mixed', 'troubled', 'paused'].includes(path);
	return isLaying && isAtWork ? heldWindow(c) : null;
}
