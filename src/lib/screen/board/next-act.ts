// Apart from what makes the lines, which brings the whole process with it: a row needs this alone.
import type { BoardLine } from './board-line';

/** What comes next on a mold at `now`: with its window shut, something else than before. */
export function nextActOf({ nextAct, nextActPast, window }: BoardLine, now: string): string {
	const isPast = window?.closesAt != null && now > window.closesAt;
	return isPast ? (nextActPast ?? nextAct) : nextAct;
}
