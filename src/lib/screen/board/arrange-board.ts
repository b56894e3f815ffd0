import { windowPhase, type WindowPhase } from '../design/window-phase';
import type { BoardLine } from './board-line';
import type { BoardQuery } from './board-query';

export interface Viewer {
	id: string;
	maySign: boolean;
}

export type GroupId = 'supervisor' | 'open' | 'waiting' | 'work' | 'paused' | 'ended' | 'others';

export interface BoardGroup {
	id: GroupId;
	title: string;
	lines: BoardLine[];
}

const GROUPS: Array<[GroupId, string]> = [
	['supervisor', 'Needs a supervisor'],
	['open', 'Act now: the window is open or shut'],
	['waiting', 'Waiting for a window'],
	['work', 'In hand, no clock running'],
	['paused', 'Paused'],
	['others', 'All others'],
	['ended', 'Ended']
];

const ENDED = ['handed over', 'abandoned', 'rejected'];
const ASK_ORDER = ['trouble', 'damage', 'deviation', 'signature'];

export function isEnded({ status }: BoardLine): boolean {
	return ENDED.includes(status);
}

/** Where the present lies against a line's window; null without one. */
export function phaseOfLine({ window }: BoardLine, now: string): WindowPhase | null {
	return window && windowPhase({ ...window, now }).phase;
}

/** Whether this person can do something about it now: sign or decide, or go on with their own work. */
export function needsViewer(line: BoardLine, viewer: Viewer, now: string): boolean {
	if (isEnded(line)) return false;
	if (line.ask) return viewer.maySign && !line.workers.includes(viewer.id);
	return line.workerId === viewer.id && phaseOfLine(line, now) !== 'wait';
}

/** The lines that a query asks for, at an instant, for one person. */
export function filterBoard(
	lines: readonly BoardLine[],
	query: BoardQuery,
	viewer: Viewer,
	now: string
): BoardLine[] {
	const words = query.q.toLowerCase().split(/\s+/).filter(Boolean);
	return lines.filter((line) => {
		const text = `${line.title} ${line.worker} ${line.phaseTitle} ${line.step}`.toLowerCase();
		if (!words.every((word) => text.includes(word))) return false;
		if (query.phase !== '' && line.phase !== query.phase) return false;
		if (query.show === 'me' && !needsViewer(line, viewer, now)) return false;
		if (query.show === 'supervisor' && (!line.ask || isEnded(line))) return false;
		if (query.show === 'mine' && !line.workers.includes(viewer.id)) return false;
		switch (query.status) {
			case 'running':
				return !isEnded(line);
			case 'paused':
				return line.status === 'paused';
			case 'ended':
				return isEnded(line);
			default:
				return true;
		}
	});
}

/** Lines in groups, the most urgent group and line first; empty groups are left out. */
export function arrangeBoard(
	lines: readonly BoardLine[],
	sort: BoardQuery['sort'],
	now: string
): BoardGroup[] {
	const chosen = sort === 'urgency' ? byUrgency : sort === 'name' ? byName : byStart;
	return GROUPS.flatMap(([id, title]) => {
		const own = lines.filter((line) => groupOf(line, sort, now) === id);
		const compare = id === 'waiting' ? byOpening : chosen;
		return own.length === 0 ? [] : [{ id, title, lines: own.toSorted(compare) }];
	});
}

function groupOf(line: BoardLine, sort: BoardQuery['sort'], now: string): GroupId {
	if (isEnded(line)) return 'ended';
	if (line.ask) return 'supervisor';
	if (sort !== 'urgency') return 'others';
	if (line.status === 'paused') return 'paused';
	const phase = phaseOfLine(line, now);
	if (phase === null) return 'work';
	return phase === 'wait' ? 'waiting' : 'open';
}

/** Asked first by kind and then by who waits longest; windows by the edge that comes next. */
function byUrgency(a: BoardLine, b: BoardLine): number {
	if (a.ask && b.ask) {
		const kinds = ASK_ORDER.indexOf(a.ask.kind) - ASK_ORDER.indexOf(b.ask.kind);
		return kinds || a.lastAt.localeCompare(b.lastAt);
	}
	if (isEnded(a)) return b.lastAt.localeCompare(a.lastAt);
	return closing(a).localeCompare(closing(b)) || a.lastAt.localeCompare(b.lastAt);
}

/** A window that never shuts can wait longest. */
function closing({ window }: BoardLine): string {
	return window?.closesAt ?? '9999';
}

function byOpening(a: BoardLine, b: BoardLine): number {
	return (a.window?.opensAt ?? '').localeCompare(b.window?.opensAt ?? '');
}

function byName(a: BoardLine, b: BoardLine): number {
	return a.title.localeCompare(b.title, 'en', { numeric: true });
}

function byStart(a: BoardLine, b: BoardLine): number {
	return b.openedAt.localeCompare(a.openedAt);
}
