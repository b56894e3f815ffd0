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
		says: () => 'there is no bare coat to test now'
	},
	windowShut: {
		holds: (c, e) => !isCovered(c) && !isWindowOpen(c, e.at),
		says: (c) =>
			`the recoat window is open until ${c.windowClosesAt ?? 'the next coat'}: no need to abrade`
	},
	/** An abraded surface takes no print, so it needs none; found wet, it needs another look. */
	tackPassed: {
		holds: isPassed,
		says: (c) =>
			c.isWet
				? 'the surface below was found wet: wait, then test it again'
				: 'the coat below has not passed its fingertip test'
	},
	windowOpen: {
		holds: (c, e) => isTakenBelow(c, e.at),
		says: (c) =>
			`the recoat window closed at ${c.windowClosesAt ?? ''}: abrade, wipe, and have the deviation decided`
	},
	/** The cup mixed while the first is laid, should that one be set aside. */
	surfaceTakesNext: {
		holds: (c, e) => !isSince(c, 3) || (isPassed(c) && isTakenBelow(c, e.at)),
		says: (c) =>
			isPassed(c)
				? `the recoat window closed at ${c.windowClosesAt ?? ''}: lay the cup in hand first, then mix the next`
				: 'the surface below has not passed its test: lay the cup in hand first'
	},
	brushBackDue: after(
		(c) => c.finishedAt,
		(c) => coatAtWork(c)?.brushBackS ?? 0,
		'it still runs: brush it back up'
	)
});
