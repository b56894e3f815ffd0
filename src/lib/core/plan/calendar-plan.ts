import type { Plan } from './plan';
import { remembered } from './remembered';
import { schedule, type Placed } from './schedule';
import { workingTimes, type WorkingTime } from './shift-hours';
import type { Shop } from './shop';
import { warn, type Draft } from './trace';
import type { Task } from './task';

/** Milliseconds of a day; exact. */
const DAY_MS = 86_400_000;
/** How far ahead a better start is looked for; choice of the plan. */
const SEARCH_DAYS = 14;
/** Starts that are tried, half an hour apart; choice of the plan. */
const GRID_MS = 30 * 60_000;
/** Longest calendar that is laid out; choice of the plan. */
const MOST_DAYS = 200;

export interface CalendarPlan {
	calendar: Plan['calendar'];
	betterStartAt: string | null;
	/** When the work would be finished with that start. */
	betterFinishAt: string | null;
	finishAt: string;
	/** From the start until the mold is accepted, in days. */
	moldDays: number;
	laborS: number;
	/** Of `laborS`, what the first pour takes. */
	pourLaborS: number;
}

/** The tasks on the shop's calendar, and a better start when a window falls outside its shifts. */
export function calendarPlan(draft: Draft, tasks: readonly Task[]): CalendarPlan {
	const startMs = Date.parse(draft.inputs.startAt);
	const times = timesFor(draft, tasks);
	const placed = schedule(tasks, startMs, times);
	const isTorn = placed.some(({ outsideShift }) => outsideShift);
	const betterMs = isTorn ? betterStartMs(tasks, startMs, times) : null;
	if (isTorn) warnOutside(draft, tasks, placed, betterMs);
	const accepted = tasks.findIndex(({ id }) => id === 'hold-moldAccepted');
	const acceptedMs = placed[accepted]?.endMs ?? startMs;
	return {
		calendar: tasks.map((task, index) => entryOf(task, placed[index])),
		betterStartAt: betterMs === null ? null : instant(betterMs),
		betterFinishAt:
			betterMs === null
				? null
				: instant(schedule(tasks, betterMs, times).at(-1)?.endMs ?? betterMs),
		finishAt: instant(placed.at(-1)?.endMs ?? startMs),
		moldDays: (acceptedMs - startMs) / DAY_MS,
		laborS: laborOf(tasks),
		pourLaborS: laborOf(tasks.filter(({ phase }) => phase === 'pour'))
	};
}

const laborOf = (tasks: readonly Task[]): number =>
	tasks.reduce((sum, task) => sum + task.lengthS * task.people, 0);

/** When a task ends, in milliseconds since 1970, with the start that was asked for. */
export function endOfTaskMs(draft: Draft, tasks: readonly Task[], id: string): number {
	const startMs = Date.parse(draft.inputs.startAt);
	const upTo = tasks.slice(0, tasks.findIndex((task) => task.id === id) + 1);
	return schedule(upTo, startMs, timesFor(draft, tasks)).at(-1)?.endMs ?? startMs;
}

/** The shop's working hours for as long as these tasks can take. */
function timesFor({ inputs }: Draft, tasks: readonly Task[]): WorkingTime[] {
	const workS = tasks.reduce((sum, task) => sum + (task.kind === 'work' ? task.lengthS : 0), 0);
	const waitS = tasks.reduce((sum, task) => sum + task.lengthS, 0) - workS;
	const days = Math.min(
		MOST_DAYS,
		SEARCH_DAYS + 14 + Math.ceil(waitS / 86_400) + Math.ceil(workS / 7200)
	);
	const { shifts, zone } = inputs.shop;
	return hoursOf({ shifts, zone }, Date.parse(inputs.startAt), days);
}

/** The same shop on the same day is asked again at every keystroke. */
const hoursOf = remembered(
	(shop: Pick<Shop, 'shifts' | 'zone'>, startMs: number, days: number): WorkingTime[] =>
		workingTimes(shop, startMs, days)
);

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
