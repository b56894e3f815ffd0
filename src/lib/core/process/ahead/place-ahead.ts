import { schedule } from '../../plan/schedule';
import type { WorkingTime } from '../../plan/shift-hours';
import type { AheadTask, WayAhead } from './way-ahead';

/** One stretch of a mold's days, in milliseconds since 1970. */
export interface Stretch {
	title: string;
	/** "window" is the time between its opening and its shutting in which somebody has to begin. */
	kind: 'work' | 'hold' | 'wait' | 'window';
	fromMs: number;
	toMs: number;
	/** For work that a window presses: when it must have begun. */
	latestMs: number | null;
	/** It falls where nobody is in the shop. */
	isOutside: boolean;
	/** For a window: it shut before anybody came. */
	isMissed: boolean;
}

/**
 * Where the way ahead of a mold falls on the shop's hours when it goes on now, or at its accepted start if that is still to come, as the plan's calendar is laid out:
 * pressed work when its window opens, other work in a shift that holds it.
 *
 * @param times - working hours in order, from before `nowMs` until well past `untilMs`
 * @returns stretches that begin before `untilMs`; of a held mold only its window
 */
export function placeAhead(
	way: WayAhead,
	nowMs: number,
	untilMs: number,
	times: readonly WorkingTime[]
): Stretch[] {
	const present = presentOf(way, nowMs);
	if (way.isHeld) return present.stretches;

	// A wait stands first, so that the next work is placed after it and within its window.
	const lead: AheadTask = {
		id: '',
		title: '',
		kind: 'wait',
		lengthS: (present.readyMs - nowMs) / 1000,
		closesS: present.latestMs === null ? null : (present.latestMs - nowMs) / 1000,
		isHold: false
	};
	const tasks = [lead, ...way.tasks.slice(way.tasks[0]?.kind === 'wait' ? 1 : 0)];
	const placed = schedule(
		tasks.map((task) => ({ ...task, phase: 'brief', people: 1 })),
		nowMs,
		times
	);
	const isTorn = placed[0]?.outsideShift ?? false;
	return [
		...present.stretches.map((stretch) =>
			stretch.kind === 'window' && !stretch.isMissed ? { ...stretch, isOutside: isTorn } : stretch
		),
		...stretchesOf(tasks, placed, untilMs)
	];
}

interface Present {
	/** Earliest start of the next work. */
	readyMs: number;
	/** Latest start of the next work; null when nothing presses, or when it is too late. */
	latestMs: number | null;
	stretches: Stretch[];
}

function presentOf(
	{ window, notBeforeAt, isHeld, tasks: [first] }: WayAhead,
	nowMs: number
): Present {
	if (!window) {
		const waitS = first?.kind === 'wait' ? first.lengthS : 0;
		const fromMs = Math.max(nowMs, notBeforeAt === null ? nowMs : Date.parse(notBeforeAt));
		return { readyMs: fromMs + waitS * 1000, latestMs: null, stretches: [] };
	}
	const sinceMs = Date.parse(window.sinceAt);
	const opensMs = Date.parse(window.opensAt);
	const closesMs = window.closesAt === null ? null : Date.parse(window.closesAt);
	const isMissed = closesMs !== null && closesMs <= nowMs;
	// One that shuts before it opens presses at once, as at the bench.
	const isInverted = closesMs !== null && closesMs < opensMs;
	const readyFromMs = isInverted ? sinceMs : opensMs;
	const plain = { title: window.label, latestMs: null, isOutside: false };
	const wait: Stretch[] =
		readyFromMs > sinceMs && !isHeld
			? [{ ...plain, kind: 'wait', fromMs: sinceMs, toMs: readyFromMs, isMissed: false }]
			: [];
	const open: Stretch[] =
		closesMs === null
			? []
			: [
					{
						...plain,
						kind: 'window',
						fromMs: Math.min(readyFromMs, closesMs),
						toMs: closesMs,
						isMissed
					}
				];
	return {
		readyMs: Math.max(nowMs, isMissed ? nowMs : readyFromMs),
		latestMs: isMissed ? null : closesMs,
		stretches: [...wait, ...open]
	};
}

function stretchesOf(
	tasks: readonly AheadTask[],
	placed: ReturnType<typeof schedule>,
	untilMs: number
): Stretch[] {
	let latestMs = placed[0]?.closesMs ?? null;
	return tasks.flatMap((task, index): Stretch[] => {
		const spot = placed[index];
		if (index === 0 || !spot || spot.startMs >= untilMs) return [];
		const { startMs: fromMs, endMs: toMs, closesMs, outsideShift: isOutside } = spot;
		const plain = { title: task.title, latestMs: null, isMissed: false };
		if (task.kind === 'work') {
			const pressed = latestMs;
			latestMs = null;
			const kind = task.isHold ? 'hold' : 'work';
			return [{ ...plain, kind, fromMs, toMs, latestMs: pressed, isOutside }];
		}
		latestMs = closesMs;
		const wait: Stretch = { ...plain, kind: 'wait', fromMs, toMs, isOutside: false };
		return closesMs === null
			? [wait]
			: [wait, { ...plain, kind: 'window', fromMs: toMs, toMs: closesMs, isOutside }];
	});
}
