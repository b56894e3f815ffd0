import { describe, expect, test } from 'vitest';
import { recommendedMaterials } from '$lib/core/content/demo-data';
import { clashesOf, type PlacedMold } from '$lib/core/process/ahead/clashes';
import { placeAhead, type Stretch } from '$lib/core/process/ahead/place-ahead';
import { asRuns } from '$lib/core/process/ahead/runs';
import { shopDays } from '$lib/core/process/ahead/shop-days';
import { wayAhead } from '$lib/core/process/ahead/way-ahead';
import { advance, contextOf, openJob, type JobState } from '$lib/core/process/job';
import { rehearseJob } from '$lib/core/process/rehearsal';
import { jobSummary } from '$lib/core/process/summary';
import { makePlan } from '$lib/core/plan/make-plan';
import { workingTimes } from '$lib/core/plan/shift-hours';
import { DayAxis } from '$lib/screen/board/day-axis';
import { demo } from '$lib/server/demo-content';

const HOUR_MS = 3_600_000;
const startAt = '2026-11-30T13:10:00.000Z';
const crew = { worker: 'maker', supervisor: 'supervisor' };

/** Every state of a mold made with care, from its plan to its handover. */
function statesOf(patternId: string): JobState[] {
	const found = demo.patterns.find(({ id }) => id === patternId);
	if (!found) throw new Error(`no pattern ${patternId}`);
	const plan = makePlan({
		shop: demo.shop,
		pattern: found.pattern,
		materials: recommendedMaterials(demo, found),
		people: 1,
		startAt
	});
	const { log } = rehearseJob(plan, { until: 'end', startAt, crew });
	const states: JobState[] = [];
	for (const logged of log) {
		const before = states.at(-1);
		if (!before) states.push(openJob(plan, logged));
		else {
			const answer = advance(before, logged);
			if (!answer.ok) throw new Error(answer.reason);
			states.push(answer.state);
		}
	}
	return states;
}

const molds = demo.patterns.map(({ id }) => [id, statesOf(id)] as const);

describe.each(molds)('the way ahead of %s', (_id, states) => {
	test('is known in every state, never grows, and is empty when the mold has ended', () => {
		let before = Infinity;
		for (const state of states) {
			const way = wayAhead(state);
			const isEnded = state.snapshot.status !== 'active';
			expect(way.tasks.length > 0, `${jobSummary(state).step} of ${state.title}`).toBe(!isEnded);
			expect(way.tasks.length).toBeLessThanOrEqual(before);
			before = way.tasks.length;
		}
		expect(before).toBe(0);
	});

	test('begins at the phase at work, and takes the running window from the log', () => {
		for (const state of states.filter(({ snapshot }) => snapshot.status === 'active')) {
			const way = wayAhead(state);
			const { window } = jobSummary(state);
			expect(way.window?.opensAt).toBe(window?.opensAt);
			expect(way.window?.closesAt).toBe(window?.closesAt);
			const c = contextOf(state);
			const first = c.plan.calendar.find(({ id }) => id === way.tasks[0]?.id);
			// Measuring the thickness is the last of the build, and the calendar says so.
			expect(first?.phase, `${jobSummary(state).step}: ${first?.id}`).toBe(c.phase);
		}
	});

	test('falls on the shifts: nothing before the present, pressed work within its window or marked', () => {
		for (const state of states.filter((_, index) => index % 7 === 0)) {
			const nowMs = Date.parse(state.lastAt) + 60_000;
			const untilMs = nowMs + 96 * HOUR_MS;
			const times = workingTimes(demo.shop, nowMs, 30);
			const way = wayAhead(state);
			const ahead = placeAhead(way, nowMs, untilMs, times);
			const closesMs = Date.parse(way.window?.closesAt ?? '');
			if (closesMs > nowMs) {
				expect(ahead.find(({ kind }) => kind === 'work')?.latestMs).toBe(closesMs);
			}
			for (const { kind, fromMs, toMs, latestMs, isOutside, title } of ahead) {
				if (kind !== 'work' && kind !== 'hold') continue;
				expect(fromMs, title).toBeGreaterThanOrEqual(nowMs);
				if (latestMs !== null && !isOutside) expect(fromMs, title).toBeLessThanOrEqual(latestMs);
				const isManned = times.some((time) => fromMs >= time.fromMs && toMs <= time.toMs);
				expect(isManned, `${title} ${new Date(fromMs).toISOString()}`).toBe(!isOutside);
			}
			const worked = (list: readonly Stretch[]) =>
				new Set(list.filter(({ kind }) => kind === 'work').map(({ toMs }) => toMs));
			// Drawn together, the last end of every run is still there.
			for (const toMs of worked(asRuns(ahead))) expect(worked(ahead)).toContain(toMs);
		}
	});
});

describe('a mold that was planned for a later start', () => {
	const [brief] = molds[0]?.[1] ?? [];
	if (!brief) throw new Error('no state');
	const startMs = Date.parse(startAt);
	const placedAt = (nowMs: number) =>
		placeAhead(
			wayAhead(brief),
			nowMs,
			nowMs + 96 * HOUR_MS,
			workingTimes(demo.shop, nowMs, 30)
		).find(({ kind }) => kind === 'work');

	test('is laid out from that start on while it is being briefed', () => {
		expect(placedAt(startMs - 15 * HOUR_MS)?.fromMs).toBe(startMs);
	});

	test('goes on from the present once that start has passed', () => {
		expect(placedAt(startMs + HOUR_MS)?.fromMs).toBe(startMs + HOUR_MS);
	});

	test('goes on as soon as it is begun, however early that is', () => {
		const begun = (molds[0]?.[1] ?? []).find((state) => contextOf(state).phase !== 'brief');
		if (!begun) throw new Error('no state');
		expect(wayAhead(begun).notBeforeAt).toBeNull();
	});
});

test('a window that shuts before it opens presses now, as at the bench', () => {
	const nowMs = Date.parse('2026-11-30T15:00:00.000Z');
	const at = (minutes: number) => new Date(nowMs + minutes * 60_000).toISOString();
	const states = molds[0]?.[1] ?? [];
	const state = states.find((one) => wayAhead(one).tasks[0]?.kind === 'wait');
	if (!state) throw new Error('no wait');
	const way = wayAhead(state);
	const window = { label: 'Recoat', sinceAt: at(-30), opensAt: at(20), closesAt: at(10) };
	const times = workingTimes(demo.shop, nowMs, 30);
	const ahead = placeAhead({ ...way, window, isHeld: false }, nowMs, nowMs + 96 * HOUR_MS, times);
	expect(ahead[0]).toMatchObject({ kind: 'window', fromMs: nowMs - 1_800_000 });
	expect(ahead.find(({ kind }) => kind === 'work')).toMatchObject({
		fromMs: nowMs,
		latestMs: nowMs + 600_000
	});
});

describe('the shop’s days', () => {
	// First Sunday of November and second of March: 15 U.S.C. 260a, United States.
	test.each([
		['2026-11-01T16:00:00Z', 25],
		['2026-03-08T16:00:00Z', 23],
		['2026-11-02T16:00:00Z', 24]
	])('%s is %i hours long in Chicago, and its shift keeps to the wall clock', (at, hours) => {
		const shop = {
			zone: 'America/Chicago',
			shifts: ([1, 7] as const).map((weekday) => ({ weekday, from: '07:00', to: '15:30' }))
		};
		const [day] = shopDays(shop, Date.parse(at), 1);
		expect(((day?.toMs ?? 0) - (day?.fromMs ?? 0)) / HOUR_MS).toBe(hours);
		const [shift] = day?.shifts ?? [];
		expect(((shift?.toMs ?? 0) - (shift?.fromMs ?? 0)) / HOUR_MS).toBe(8.5);
	});

	test('lie side by side without a gap, time running one way only', () => {
		const nowMs = Date.parse('2026-10-31T15:00:00Z');
		const days = shopDays(demo.shop, nowMs, 4);
		const axis = new DayAxis(days, nowMs);
		expect(axis.at(axis.fromMs)).toBe(0);
		expect(axis.at(axis.toMs - 1)).toBeCloseTo(100, 3);
		let before = -1;
		for (let ms = axis.fromMs; ms < axis.toMs; ms += HOUR_MS / 4) {
			const at = axis.at(ms);
			expect(at).toBeGreaterThan(before);
			before = at;
		}
	});
});

describe('what collides', () => {
	const at = (hours: number) => hours * HOUR_MS;
	const days = [{ fromMs: 0, toMs: at(24), shifts: [{ fromMs: at(7), toMs: at(15) }] }];
	const pressed = (title: string, from: number, latest: number, hours: number): Stretch => ({
		title,
		kind: 'work',
		fromMs: at(from),
		toMs: at(from + hours),
		latestMs: at(latest),
		isOutside: false,
		isMissed: false
	});
	const mold = (id: string, workerId: string, ...stretches: Stretch[]): PlacedMold => ({
		id,
		workerId,
		stretches
	});

	test('two coats of one person that neither order can save', () => {
		const clashes = clashesOf(
			[
				mold('a', 'ann', pressed('Coat 2', 8, 8.5, 1)),
				mold('b', 'ann', pressed('Coat 3', 8.25, 8.75, 1)),
				mold('c', 'bo', pressed('Coat 4', 8.25, 8.75, 1))
			],
			days
		);
		expect(clashes).toMatchObject([
			{ kind: 'both', workerId: 'ann', first: { id: 'a' }, second: { id: 'b' } }
		]);
	});

	test('not two that fit one after the other, whichever comes first', () => {
		const fits = [
			mold('a', 'ann', pressed('Coat 2', 8, 8.5, 1)),
			mold('b', 'ann', pressed('Coat 3', 8.25, 9, 1))
		];
		expect(clashesOf(fits, days)).toEqual([]);
		// The later opening first: it is short, and the other can still begin at 8:45.
		const other = [
			mold('a', 'ann', pressed('Coat 2', 8, 8.75, 2)),
			mold('b', 'ann', pressed('Coat 3', 8.25, 8.5, 0.5))
		];
		expect(clashesOf(other, days)).toEqual([]);
	});

	test('a run of coats outside the shifts is one, to the last of them', () => {
		const out = (title: string, from: number) => ({
			...pressed(title, from, from + 1, 0.5),
			isOutside: true
		});
		const clashes = clashesOf([mold('a', 'ann', out('Coat 2', 15), out('Coat 3', 17))], days);
		expect(clashes).toMatchObject([
			{ kind: 'outside', first: 'Coat 2', last: 'Coat 3', atMs: at(15), untilMs: at(17.5) }
		]);
	});

	test('a window that shut, and a day with more work than shift', () => {
		const shut = { ...pressed('Recoat window', 6, 6, 1), kind: 'window', isMissed: true } as const;
		const long = { ...pressed('Trim', 7, 7, 5), latestMs: null };
		const clashes = clashesOf(
			[mold('a', 'ann', shut, long), mold('b', 'ann', { ...long, title: 'Wax' })],
			days
		);
		expect(clashes).toMatchObject([
			{ kind: 'missed', title: 'Recoat window', atMs: at(7) },
			{ kind: 'full', workerId: 'ann', workS: 10 * 3600, shiftS: 8 * 3600 }
		]);
	});
});
