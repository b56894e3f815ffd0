import { arrangeBoard, phaseOfLine } from './arrange-board';
import type { BoardLine } from './board-line';

/** The most urgent lines, which stay in sight while the others take turns. */
const PINNED = 2;

export interface WallPage {
	/** In sight on every page. */
	pinned: BoardLine[];
	/** This page's share of the others. */
	lines: BoardLine[];
}

/**
 * Running molds on pages of a wall display, the most urgent first. When there is more than one page, what presses
 * most is on each of them, so that nothing that shuts soon is out of sight while the pages turn.
 *
 * @param rows - molds on one page, at least 3
 * @param now - the present, as an ISO instant
 */
export function wallPages(lines: readonly BoardLine[], rows: number, now: string): WallPage[] {
	const ordered = arrangeBoard(lines, 'urgency', now)
		.flatMap((group) => group.lines)
		.sort((a, b) => Number(presses(b, now)) - Number(presses(a, now)));
	if (ordered.length <= rows) return [{ pinned: [], lines: ordered }];

	const pinned = ordered.slice(0, PINNED).filter((line) => presses(line, now));
	const others = ordered.slice(pinned.length);
	const share = rows - pinned.length;
	return Array.from({ length: Math.ceil(others.length / share) }, (_, page) => ({
		pinned,
		lines: others.slice(page * share, (page + 1) * share)
	}));
}

/** It shuts within minutes, or somebody is in trouble: whoever passes by should see it at once. */
function presses(line: BoardLine, now: string): boolean {
	return line.ask?.kind === 'trouble' || phaseOfLine(line, now) === 'closing';
}
