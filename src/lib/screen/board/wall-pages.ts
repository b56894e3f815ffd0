import { arrangeBoard, phaseOfLine } from './arrange-board';
import type { BoardLine } from './board-line';

export interface WallPage {
	/** In sight on every page: what presses most. */
	pinned: BoardLine[];
	/** This page's share of the others. */
	lines: BoardLine[];
	/** How many that press are on other pages only. */
	pressElsewhere: number;
}

/**
 * Running molds on pages of a wall display, the most urgent first. When there is more than one page, what presses
 * is on each of them, all rows but one at the most, so that the others still take turns; what presses beyond
 * that comes first among them and is counted on every page.
 *
 * @param rows - molds on one page, at least 2
 * @param now - the present, as an ISO instant
 */
export function wallPages(lines: readonly BoardLine[], rows: number, now: string): WallPage[] {
	const ordered = arrangeBoard(lines, 'urgency', now)
		.flatMap((group) => group.lines)
		.sort((a, b) => Number(presses(b, now)) - Number(presses(a, now)));
	if (ordered.length <= rows) return [{ pinned: [], lines: ordered, pressElsewhere: 0 }];

	const pressing = ordered.filter((line) => presses(line, now)).length;
	const pinned = ordered.slice(0, Math.min(pressing, rows - 1));
	const others = ordered.slice(pinned.length);
	const share = rows - pinned.length;
	return Array.from({ length: Math.ceil(others.length / share) }, (_, page) => {
		const shown = others.slice(page * share, (page + 1) * share);
		const pressingHere = pinned.length + shown.filter((line) => presses(line, now)).length;
		return { pinned, lines: shown, pressElsewhere: pressing - pressingHere };
	});
}

/** It shuts within minutes, or somebody is in trouble: whoever passes by should see it at once. */
function presses(line: BoardLine, now: string): boolean {
	return line.ask?.kind === 'trouble' || phaseOfLine(line, now) === 'closing';
}
