import type { StepWords } from '../language/en/steps';
import { ENGLISH } from '../language/words';
import { batchAtWork, coatAtWork, type ProcessContext } from './context';
import { cupClosesAt } from './cup-life';
import { addSeconds } from './instant';
import { nextCup } from './next-cup';
import type { Window } from './step';

type WindowWords = StepWords['windows'];

/** Gelling is over by this part of the way to almost tack-free: past it, brushing drags; common practice, no source. */
const BRUSHABLE_FRACTION = 0.75;

/** The wait that runs in a state, or null when nothing is waited for. */
export function windowAt(path: string, c: ProcessContext, w = ENGLISH): Window | null {
	const said = w.steps.windows;
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
			return since(said.sealer, c.waitSinceAt, c.plan.release.sealerDryS ?? 0, null, '');
		case 'release.hazing':
			return since(said.wax, c.waitSinceAt, c.plan.release.waxHazeS, null, '');
		case 'release.drying':
			return since(said.film, c.waitSinceAt, c.plan.release.filmDryS, null, '');
		case 'coating.mixed':
		case 'shell.mixed':
			return workingWindow(c, said);
		case 'coating.brushing':
			return since(
				said.gel,
				c.finishedAt,
				coat?.brushBackS ?? 0,
				c.finishedAt && coat
					? addSeconds(c.finishedAt, BRUSHABLE_FRACTION * (coat.tackSoonestS ?? coat.tackTestS))
					: null,
				said.gelAfter
			);
		case 'coating.curing':
			return curingWindow(c, said);
		case 'coating.weighing':
		case 'coating.weighed':
		case 'shell.weighing':
		case 'shell.weighed':
			return openWindow(c, said);
		case 'troubled':
		case 'paused':
			return workingWindow(c, said) ?? heldWindow(c, said);
		case 'gloveCure':
			return since(said.glove, c.finishedAt, c.plan.gloveCure.testS, null, '');
		case 'shellCure':
			return since(said.shell, c.finishedAt, c.plan.shellCure.testS, null, '');
		default:
			return null;
	}
}

function workingWindow(c: ProcessContext, said: WindowWords): Window | null {
	const batch = batchAtWork(c);
	const mixedAt = c.cup?.mixedAt;
	if (!batch || !mixedAt) return null;
	return {
		label: said.working,
		sinceAt: mixedAt,
		opensAt: mixedAt,
		closesAt: cupClosesAt(c, c.cup),
		after: said.workingAfter
	};
}

/** The surface below is ready now, until its window closes. */
function openWindow(c: ProcessContext, said: WindowWords): Window | null {
	const isBare = c.phase === 'shell' || c.laidG === 0 || nextCup(c) !== null;
	const counts = isBare && c.windowClosesAt;
	if (!counts || c.abraded || !c.finishedAt) return null;
	return {
		label: c.laidG > 0 && c.phase !== 'shell' ? said.recoatBare : said.recoat,
		sinceAt: c.finishedAt,
		opensAt: c.finishedAt,
		closesAt: counts,
		after: said.recoatAfter
	};
}

/** The coat just laid: from when it can be tested, till the next one no longer bonds. */
function curingWindow(c: ProcessContext, said: WindowWords): Window | null {
	const { finishedAt } = c;
	if (finishedAt === null) return null;
	return {
		label: said.recoat,
		sinceAt: finishedAt,
		opensAt: addSeconds(finishedAt, coatAtWork(c)?.tackTestS ?? 0),
		closesAt: c.coatIndex + 1 < c.coats.length ? c.windowClosesAt : null,
		after: said.recoatAfter
	};
}

/** The surface goes on curing whatever stopped the work. */
function heldWindow(c: ProcessContext, said: WindowWords): Window | null {
	const isCoating = c.phase === 'detail' || c.phase === 'build';
	if (isCoating && c.laidG > 0 && isFinished(c)) return curingWindow(c, said);
	return ['detail', 'build', 'shell'].includes(c.phase) ? openWindow(c, said) : null;
}

/** The coat at work is complete: nothing was laid after its end. */
function isFinished({ finishedAt, laidAt }: ProcessContext): boolean {
	return finishedAt !== null && laidAt !== null && finishedAt >= laidAt;
}

/** The second clock of a state: the surface below, while a cup is laid on what of it is still bare. */
export function windowBeside(path: string, c: ProcessContext, w = ENGLISH): Window | null {
	const isLaying = c.cup?.mixedAt != null;
	const isAtWork = ['coating.mixed', 'shell.mixed', 'troubled', 'paused'].includes(path);
	return isLaying && isAtWork ? heldWindow(c, w.steps.windows) : null;
}
