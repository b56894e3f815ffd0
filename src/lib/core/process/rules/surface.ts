import { coatAtWork, isSince, type ProcessContext } from '../context';
import { secondsBetween } from '../instant';
import { cupToWeigh } from '../next-cup';
import { after, rules } from './rule';

function isWindowOpen(c: ProcessContext, at: string): boolean {
	return c.abraded || c.windowClosesAt === null || secondsBetween(at, c.windowClosesAt) >= 0;
}

const isBare = (c: ProcessContext) => c.phase !== 'shell' && c.laidG === 0 && c.coatIndex > 0;

const isPassed = (c: ProcessContext) => !isBare(c) || (!c.isWet && (c.tackPassed || c.abraded));
/** The coat at work covers what is below it, as far as the window goes: from version 5 on, only once its last cup is on. */
export const isCovered = (c: ProcessContext) =>
	c.phase !== 'shell' && c.laidG > 0 && (!isSince(c, 5) || cupToWeigh(c) === null);
const isTakenBelow = (c: ProcessContext, at: string) => isCovered(c) || isWindowOpen(c, at);

/** The surface below: tested, inside its window, or abraded. */
export const SURFACE = rules({
	/** There is a coat below, and nothing of the next one is on it yet. */
	coatBelow: {
		holds: isBare,
		says: (_c, _e, { rules: said }) => said.noBareCoat
	},
	windowShut: {
		holds: (c, e) => !isCovered(c) && !isWindowOpen(c, e.at),
		says: (c, _e, { rules: said }) => said.windowStillOpen(c.windowClosesAt ?? said.nextCoat)
	},
	/** An abraded surface takes no print, so it needs none; found wet, it needs another look. */
	tackPassed: {
		holds: isPassed,
		says: (c, _e, { rules: said }) => (c.isWet ? said.foundWet : said.notPassed)
	},
	windowOpen: {
		holds: (c, e) => isTakenBelow(c, e.at),
		says: (c, _e, { rules: said }) => said.windowClosed(c.windowClosesAt ?? '')
	},
	/** The cup mixed while the first is laid, should that one be set aside. */
	surfaceTakesNext: {
		holds: (c, e) => !isSince(c, 3) || (isPassed(c) && isTakenBelow(c, e.at)),
		says: (c, _e, { rules: said }) =>
			isPassed(c) ? said.windowClosedNext(c.windowClosesAt ?? '') : said.belowNotPassed
	},
	brushBackDue: after(
		(c) => c.finishedAt,
		(c) => coatAtWork(c)?.brushBackS ?? 0,
		(said) => said.stillRuns
	)
});
