import { placeAhead, type Stretch } from '$lib/core/process/ahead/place-ahead';
import { asRuns } from '$lib/core/process/ahead/runs';
import { wayAhead, type WayAhead } from '$lib/core/process/ahead/way-ahead';
import type { WorkingTime } from '$lib/core/plan/shift-hours';
import type { JobState } from '$lib/core/process/job';
import { isEnded } from './arrange-board';
import { unnamedLine, withWorker, type BoardLine } from './board-line';

/** A running mold and where its work falls in the days ahead. */
export type DaysLine = Pick<
	BoardLine,
	'id' | 'title' | 'status' | 'phaseTitle' | 'step' | 'workerId' | 'worker' | 'ask' | 'lastAt'
> & { stretches: Stretch[] };

/** A line of the board with its way ahead: the same for as long as nothing is entered. */
export interface LineAhead {
	line: BoardLine;
	way: WayAhead | null;
}

/** What the days are made of, for one job. Null: the mold has ended. */
export function lineAhead(job: Parameters<typeof unnamedLine>[0] & { state: JobState | null }) {
	const line = unnamedLine(job);
	if (isEnded(line)) return null;
	return { line, way: job.state && wayAhead(job.state) } satisfies LineAhead;
}

/** Every running mold on the shop's hours, what needs somebody soonest first. */
export function placedLines(
	ahead: ReadonlyArray<LineAhead | null>,
	names: Readonly<Record<string, string>>,
	{ nowMs, untilMs, times }: { nowMs: number; untilMs: number; times: readonly WorkingTime[] }
): DaysLine[] {
	const lines = ahead.flatMap((one): DaysLine[] => {
		if (!one) return [];
		const { id, title, status, phaseTitle, step, workerId, worker, ask, lastAt } = withWorker(
			one.line,
			names
		);
		const stretches = one.way ? placeAhead(one.way, nowMs, untilMs, times) : [];
		return [{ id, title, status, phaseTitle, step, workerId, worker, ask, lastAt, stretches }];
	});
	return lines.sort(
		(a, b) => urgency(a) - urgency(b) || a.title.localeCompare(b.title, 'en', { numeric: true })
	);
}

/** The line as it is drawn and listed, short pieces of loose work taken together. */
export function drawnLine(line: DaysLine): DaysLine {
	return { ...line, stretches: asRuns(line.stretches) };
}

/** What waits for a supervisor waits already; the rest by the edge of the window that comes next. */
function urgency({ ask, stretches }: DaysLine): number {
	if (ask) return 0;
	const window = stretches.find(({ kind }) => kind === 'window');
	return window?.toMs ?? stretches[0]?.fromMs ?? Infinity;
}
