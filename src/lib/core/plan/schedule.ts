import type { WorkingTime } from './shift-hours';
import type { Task } from './task';

export interface Placed {
	startMs: number;
	endMs: number;
	closesMs: number | null;
	outsideShift: boolean;
}

/**
 * When each task falls, one after another. Work that nothing presses waits for a shift that holds it
 * whole; work that a window presses starts when the wait is over, in the next shift if that begins
 * before the window shuts, and outside the shifts, marked, if it does not. Waits pass day and night.
 *
 * @param times - working hours in order; beyond the last, work is placed where it falls, marked
 * @param stopsWhenTorn - ends with the first work outside the shifts, for a quick search
 */
export function schedule(
	tasks: readonly Task[],
	startMs: number,
	times: readonly WorkingTime[],
	stopsWhenTorn = false
): Placed[] {
	const placed: Placed[] = [];
	let nowMs = startMs;
	let index = 0;
	let closesMs: number | null = null;
	for (const task of tasks) {
		const lengthMs = task.lengthS * 1000;
		if (task.kind === 'wait') {
			closesMs = task.closesS === null ? null : nowMs + task.closesS * 1000;
			placed.push({ startMs: nowMs, endMs: nowMs + lengthMs, closesMs, outsideShift: false });
			nowMs += lengthMs;
			continue;
		}
		while (index < times.length && (times[index]?.toMs ?? 0) <= nowMs) index += 1;
		const slotMs = slotFrom(times, index, nowMs, lengthMs);
		const isTooLate = slotMs === null || (closesMs !== null && slotMs > closesMs);
		// Work too long for any shift at least begins with one.
		const openMs = closesMs === null ? Math.max(nowMs, times[index]?.fromMs ?? nowMs) : nowMs;
		const from = isTooLate ? openMs : slotMs;
		const waited = placed.at(-1);
		// The wait shows it too: its window is the one that nobody is there for.
		if (isTooLate && closesMs !== null && waited) waited.outsideShift = true;
		placed.push({ startMs: from, endMs: from + lengthMs, closesMs: null, outsideShift: isTooLate });
		if (isTooLate && stopsWhenTorn) break;
		nowMs = from + lengthMs;
		closesMs = null;
	}
	return placed;
}

/** Earliest start from `nowMs` on at which a shift holds the whole length. */
function slotFrom(
	times: readonly WorkingTime[],
	index: number,
	nowMs: number,
	lengthMs: number
): number | null {
	for (let i = index; i < times.length; i += 1) {
		const time = times[i];
		if (!time) break;
		const from = Math.max(nowMs, time.fromMs);
		if (from + lengthMs <= time.toMs) return from;
	}
	return null;
}
