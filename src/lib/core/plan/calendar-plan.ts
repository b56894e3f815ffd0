import type { Plan } from './plan';
import { schedule, type Placed } from './schedule';
import { workingTimes, type WorkingTime } from './shift-hours';
import { warn, type Draft } from './trace';
import type { Task } from './task';

const DAY_MS = 86_400_000;
const SEARCH_DAYS = 14;
const GRID_MS = 30 * 60_000;
const MOST_DAYS = 200;

export interface CalendarPlan {
	calendar: Plan['calendar'];
	betterStartAt: string | null;
	finishAt: string;
	/** From the start until the mold is accepted, in days. */
	moldDays: number;
	laborS: number;
}

/** The tasks on the shop's calendar, and a better start when a window falls outside its shifts. */
export function calendarPlan(draft: Draft, tasks: readonly Task[]): CalendarPlan {
	const { shop, startAt } = draft.inputs;
	const startMs = Date.parse(startAt);
	const workS = tasks.reduce((sum, task) => sum + (task.kind === 'work' ? task.lengthS : 0), 0);
	const waitS = tasks.reduce((sum, task) => sum + task.lengthS, 0) - workS;
	const days = Math.min(
		MOST_DAYS,
		SEARCH_DAYS + 14 + Math.ceil(waitS / 86_400) + Math.ceil(workS / 7200)
	);
	const times = workingTimes(shop, startMs, days);
	const placed = schedule(tasks, startMs, times);
	const isTorn = placed.some(({ outsideShift }) => outsideShift);
	const betterMs = isTorn ? betterStartMs(tasks, startMs, times) : null;
	if (isTorn) warnOutside(draft, tasks, placed, betterMs);
	const accepted = tasks.findIndex(({ id }) => id === 'hold-moldAccepted');
	const acceptedMs = placed[accepted]?.endMs ?? startMs;
	return {
		calendar: tasks.map((task, index) => entryOf(task, placed[index])),
		betterStartAt: betterMs === null ? null : instant(betterMs),
		finishAt: instant(placed.at(-1)?.endMs ?? startMs),
		moldDays: (acceptedMs - startMs) / DAY_MS,
		laborS: tasks.reduce((sum, task) => sum + task.lengthS * task.people, 0)
	};
}

const instant = (ms: number): string => new Date(ms).toISOString();

function entryOf(task: Task, placed: Placed | undefined): Plan['calendar'][number] {
	const { startMs = 0, endMs = 0, closesMs = null, outsideShift = false } = placed ?? {};
	return {
		id: task.id,
		phase: task.phase,
		title: task.title,
		kind: task.kind,
		startAt: instant(startMs),
		endAt: instant(endMs),
		closesAt: closesMs === null ? null : instant(closesMs),
		outsideShift
	};
}

/** Earliest start on a half-hour grid inside the shifts, within two weeks, that tears no window. */
function betterStartMs(
	tasks: readonly Task[],
	startMs: number,
	times: readonly WorkingTime[]
): number | null {
	const endMs = startMs + SEARCH_DAYS * DAY_MS;
	for (const { fromMs, toMs } of times) {
		if (fromMs > endMs) return null;
		const firstMs = Math.ceil(Math.max(fromMs, startMs) / GRID_MS) * GRID_MS;
		for (let ms = firstMs; ms < toMs && ms <= endMs; ms += GRID_MS) {
			if (!schedule(tasks, ms, times, true).at(-1)?.outsideShift) return ms;
		}
	}
	return null;
}

function warnOutside(
	draft: Draft,
	tasks: readonly Task[],
	placed: readonly Placed[],
	betterMs: number | null
): void {
	const titles = tasks
		.filter((task, index) => task.kind === 'work' && placed[index]?.outsideShift)
		.map(({ title }) => title);
	const better =
		betterMs === null
			? 'No start within the next two weeks avoids it: split the work, or agree on hours.'
			: 'A better start is offered.';
	const text = `Outside the shop's shifts with this start: ${titles.join(', ')}. ${better}`;
	warn(draft, 'warn', 'outside-shift', 'calendar', text);
}
