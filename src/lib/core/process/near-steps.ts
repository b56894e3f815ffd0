import type { Words } from '../language/words';
import { coatAtWork, isLaying, type ProcessContext } from './context';
import { cupToWeigh, nextCup } from './next-cup';
import { sealerCoatsOf } from './sealing';
import { batchTitle } from './steps/batch-words';

const upTo = (from: number, to: number): number[] =>
	Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);

/** What is still to be done, in order, before the coat, round or phase at work ends; empty where one act ends it. */
export function nearSteps(path: string, c: ProcessContext, w: Words): string[] {
	const [phase, state = ''] = path.split('.');
	switch (phase) {
		case 'sealing':
			return upTo(c.sealerCoats + 2, sealerCoatsOf(c)).map((n) =>
				w.steps.seal.title({ n, of: sealerCoatsOf(c) })
			);
		case 'release':
			return releaseSteps(state, c, w);
		case 'coating':
			return [...cupSteps(state, c, w), ...coatSteps(state, c, w)];
		case 'shell':
			return cupSteps(state, c, w);
		default:
			return [];
	}
}

function releaseSteps(state: string, c: ProcessContext, { steps }: Words): string[] {
	const { waxCoats, filmPasses } = c.plan.release;
	const isWax = state === 'waxing' || state === 'hazing';
	const wax = isWax ? upTo(c.waxCoats + 2, waxCoats) : [];
	const film = upTo(isWax ? 1 : c.filmPasses + 2, filmPasses);
	return [
		...(state === 'waxing' ? [steps.windows.wax] : []),
		...(state === 'filming' ? [steps.windows.film] : []),
		...wax.map((n) => steps.wax.title({ n, of: waxCoats })),
		...film.map((n) => steps.film.title({ n, of: filmPasses }))
	];
}

function cupSteps(state: string, c: ProcessContext, w: Words): string[] {
	if (!['weighing', 'weighed', 'mixed'].includes(state)) return [];
	const cup = isLaying(c) ? cupToWeigh(c) : nextCup(c);
	if (!cup) return [];
	return upTo(isLaying(c) ? cup.number : cup.number + 1, cup.of).map((n) =>
		w.bench.cupOf({ n, of: cup.of })
	);
}

function coatSteps(state: string, c: ProcessContext, w: Words): string[] {
	const isBeforeTest = ['weighing', 'weighed', 'mixed', 'brushing'].includes(state);
	if (!isBeforeTest) return [];
	const title = batchTitle(w, c);
	const isBrushed = state !== 'brushing' && coatAtWork(c)?.brushBackS != null;
	return [
		...(isBrushed ? [w.steps.coat.brushBackTitle(title)] : []),
		w.steps.coat.testTitle(title)
	];
}
