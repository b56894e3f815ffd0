import type { Stretch } from './place-ahead';
import type { ShopDay } from './shop-days';

/** A mold with its days, and who has it in hand. */
export interface PlacedMold {
	id: string;
	workerId: string | null;
	stretches: readonly Stretch[];
}

/** Something in the days ahead that cannot be done, or not as it stands. */
export type Clash =
	/** Work that windows press falls outside the shifts: from the first piece of it to the last before a night's rest. */
	| { kind: 'outside'; atMs: number; id: string; first: string; last: string; untilMs: number }
	/** The window of the present shut, and nobody has said what became of it. */
	| { kind: 'missed'; atMs: number; id: string; title: string }
	/** One person cannot be in time for both, whichever comes first. */
	| { kind: 'both'; atMs: number; workerId: string; first: Pressed; second: Pressed }
	/** One person has more planned for a day than its shifts have hours. */
	| { kind: 'full'; atMs: number; workerId: string; workS: number; shiftS: number };

/** Work that a window presses. */
export interface Pressed {
	id: string;
	title: string;
	/** When it can begin, when it must have begun, and how long it takes. */
	fromMs: number;
	latestMs: number;
	lengthMs: number;
}

/** Everything that collides in the days ahead, in the order of time. */
export function clashesOf(molds: readonly PlacedMold[], days: readonly ShopDay[]): Clash[] {
	const clashes = [
		...molds.flatMap(windowClashes),
		...byWorker(molds).flatMap(([workerId, own]) => [
			...bothClashes(workerId, own),
			...fullDays(workerId, own, days)
		])
	];
	return clashes.sort((a, b) => a.atMs - b.atMs);
}

function windowClashes({ id, stretches }: PlacedMold): Clash[] {
	const missed = stretches.flatMap(({ isMissed, toMs, title }): Clash[] =>
		isMissed ? [{ kind: 'missed', atMs: toMs, id, title }] : []
	);
	return [...missed, ...outsideRuns(id, stretches)];
}

/** One coat outside the shifts draws the next ones after it, so they are said as one. */
function outsideRuns(id: string, stretches: readonly Stretch[]): Clash[] {
	const runs: Array<Clash & { kind: 'outside' }> = [];
	let isRunning = false;
	for (const { kind, title, fromMs, toMs, isOutside } of stretches) {
		if (kind === 'wait' || kind === 'window') continue;
		const run = isRunning ? runs.at(-1) : undefined;
		if (isOutside && run) Object.assign(run, { last: title, untilMs: toMs });
		else if (isOutside) {
			runs.push({ kind: 'outside', atMs: fromMs, id, first: title, last: title, untilMs: toMs });
		}
		isRunning = isOutside;
	}
	return runs;
}

function byWorker(molds: readonly PlacedMold[]): Array<[string, PlacedMold[]]> {
	const found = new Map<string, PlacedMold[]>();
	for (const mold of molds) {
		if (mold.workerId === null) continue;
		found.set(mold.workerId, [...(found.get(mold.workerId) ?? []), mold]);
	}
	return [...found];
}

function bothClashes(workerId: string, molds: readonly PlacedMold[]): Clash[] {
	const pressed = molds.flatMap(pressedOf).sort((a, b) => a.fromMs - b.fromMs);
	return pressed.flatMap((first, index) => {
		const clashes: Clash[] = [];
		for (const second of pressed.slice(index + 1)) {
			// Sorted by their openings: whatever opens after this one's last moment leaves it alone.
			if (second.fromMs >= first.latestMs + first.lengthMs) break;
			if (second.id === first.id || fits(first, second) || fits(second, first)) continue;
			clashes.push({ kind: 'both', atMs: second.fromMs, workerId, first, second });
		}
		return clashes;
	});
}

function pressedOf({ id, stretches }: PlacedMold): Pressed[] {
	return stretches.flatMap(({ kind, title, fromMs, toMs, latestMs }) =>
		kind === 'work' && latestMs !== null
			? [{ id, title, fromMs, latestMs: Math.max(fromMs, latestMs), lengthMs: toMs - fromMs }]
			: []
	);
}

/** Whether the second can still begin in time when the first is done as soon as it can be. */
function fits(first: Pressed, second: Pressed): boolean {
	return Math.max(first.fromMs + first.lengthMs, second.fromMs) <= second.latestMs;
}

function fullDays(
	workerId: string,
	molds: readonly PlacedMold[],
	days: readonly ShopDay[]
): Clash[] {
	const work = molds
		.flatMap(({ stretches }) => stretches)
		.filter(({ kind, isOutside }) => kind === 'work' && !isOutside);
	return days.flatMap((day): Clash[] => {
		const within = work.filter(({ fromMs }) => fromMs >= day.fromMs && fromMs < day.toMs);
		const workMs = within.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0);
		const fromMs = Math.min(...within.map((stretch) => stretch.fromMs));
		// Of the present day only what is left of it counts, which begins with the first work.
		const shiftMs = day.shifts.reduce(
			(sum, shift) => sum + Math.max(0, shift.toMs - Math.max(shift.fromMs, fromMs)),
			0
		);
		if (workMs <= shiftMs) return [];
		const [workS, shiftS] = [workMs / 1000, shiftMs / 1000];
		return [{ kind: 'full', atMs: fromMs, workerId, workS, shiftS }];
	});
}
