import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { schedule } from '../../src/lib/core/plan/schedule';
import { workingTimes } from '../../src/lib/core/plan/shift-hours';
import type { Task } from '../../src/lib/core/plan/task';
import { detailInputs, testInputs, testShop } from '../fixtures/materials';

const HOUR = 3_600_000;
const iso = (ms: number) => new Date(ms).toISOString();

describe('working hours as instants', () => {
	const shop = {
		...testShop,
		shifts: [
			{ weekday: 7, from: '01:00', to: '09:00' },
			{ weekday: 1, from: '07:30', to: '16:30' }
		]
	};

	test('Monday in Chicago in winter is six hours behind UTC (IANA zone)', () => {
		const times = workingTimes(
			{ ...shop, shifts: [shop.shifts[1]!] },
			Date.parse('2026-11-30T00:00:00Z'),
			3
		);
		expect(times.map(({ fromMs, toMs }) => [iso(fromMs), iso(toMs)])).toEqual([
			['2026-11-30T13:30:00.000Z', '2026-11-30T22:30:00.000Z']
		]);
	});

	test('on the night the clocks go forward a shift over it is an hour shorter (8 March 2026)', () => {
		const [night] = workingTimes(shop, Date.parse('2026-03-08T06:00:00Z'), 1);
		expect(((night?.toMs ?? 0) - (night?.fromMs ?? 0)) / HOUR).toBe(7);
	});

	test('on the night they go back it is an hour longer (1 November 2026)', () => {
		const [night] = workingTimes(shop, Date.parse('2026-11-01T06:00:00Z'), 1);
		expect(((night?.toMs ?? 0) - (night?.fromMs ?? 0)) / HOUR).toBe(9);
	});

	test('shifts that touch or overlap are one', () => {
		const split = {
			...testShop,
			shifts: [
				{ weekday: 1, from: '07:00', to: '12:00' },
				{ weekday: 1, from: '12:00', to: '16:00' }
			]
		};
		expect(workingTimes(split, Date.parse('2026-11-30T12:00:00Z'), 1)).toHaveLength(1);
	});
});

describe('placing the work', () => {
	const start = Date.parse('2026-11-30T13:30:00Z');
	const times = workingTimes(testShop, start, 10);
	const task = (over: Partial<Task>): Task => ({
		id: 't',
		phase: 'build',
		title: 'T',
		kind: 'work',
		lengthS: 3600,
		people: 1,
		closesS: null,
		...over
	});

	test('work waits for a shift that holds it whole, waits pass by night', () => {
		const placed = schedule(
			[task({}), task({ kind: 'wait', lengthS: 8 * 3600 }), task({})],
			start,
			times
		);
		expect(placed.map(({ startMs }) => iso(startMs))).toEqual([
			'2026-11-30T13:30:00.000Z',
			'2026-11-30T14:30:00.000Z',
			'2026-12-01T13:30:00.000Z'
		]);
		expect(placed.some(({ outsideShift }) => outsideShift)).toBe(false);
	});

	test('a window that shuts before the next shift marks the wait and the work', () => {
		const wait = task({ kind: 'wait', lengthS: 8.5 * 3600, closesS: 10 * 3600 });
		const placed = schedule([task({}), wait, task({})], start, times);
		expect(placed.map(({ outsideShift }) => outsideShift)).toEqual([false, true, true]);
		expect(iso(placed[2]?.startMs ?? 0)).toBe('2026-11-30T23:00:00.000Z');
	});

	test('a window still open next morning lets the work wait for the shift', () => {
		const wait = task({ kind: 'wait', lengthS: 8.5 * 3600, closesS: 24 * 3600 });
		const placed = schedule([task({}), wait, task({})], start, times);
		expect(placed.map(({ outsideShift }) => outsideShift)).toEqual([false, false, false]);
		expect(iso(placed[2]?.startMs ?? 0)).toBe('2026-12-01T13:30:00.000Z');
	});

	test('work longer than any shift begins with one and is marked', () => {
		const placed = schedule([task({ lengthS: 12 * 3600 })], start - 3 * HOUR, times);
		expect(placed).toMatchObject([{ startMs: start, outsideShift: true }]);
	});
});

describe('the calendar of a plan', () => {
	test('a start at which all fits offers no other', () => {
		const plan = makePlan(testInputs());
		expect(plan.calendar.some(({ outsideShift }) => outsideShift)).toBe(false);
		expect(plan.betterStartAt).toBeNull();
		expect(plan.betterFinishAt).toBeUndefined();
	});

	test('a start that tears a window offers the earliest one that tears none', () => {
		const asked = makePlan(detailInputs());
		expect(asked.calendar.some(({ outsideShift }) => outsideShift)).toBe(true);
		expect(asked.warnings.map(({ code }) => code)).toContain('outside-shift');
		const betterAt = asked.betterStartAt ?? '';
		expect(betterAt > asked.inputs.startAt).toBe(true);
		const better = makePlan(detailInputs({ startAt: betterAt }));
		expect(better.calendar.some(({ outsideShift }) => outsideShift)).toBe(false);
		// The finish is said before the better start is taken.
		expect(asked.betterFinishAt).toBe(better.finishAt);
		// Every half hour of the shift before it does tear one.
		for (let ms = Date.parse(asked.inputs.startAt); ms < Date.parse(betterAt); ms += HOUR / 2) {
			const earlier = makePlan(detailInputs({ startAt: iso(ms) }));
			expect(
				earlier.calendar.some(({ outsideShift }) => outsideShift),
				iso(ms)
			).toBe(true);
		}
	});

	test('work stands inside the shifts, wherever it is not marked', () => {
		const plan = makePlan(detailInputs({ startAt: '2026-12-04T20:00:00Z' }));
		const times = workingTimes(testShop, Date.parse(plan.inputs.startAt), 30);
		for (const entry of plan.calendar) {
			if (entry.kind === 'wait' || entry.outsideShift) continue;
			const inside = times.some(
				({ fromMs, toMs }) => Date.parse(entry.startAt) >= fromMs && Date.parse(entry.endAt) <= toMs
			);
			expect(inside, `${entry.id} at ${entry.startAt}`).toBe(true);
		}
	});

	test('the longest waits end in the morning: glove and shell cure overnight', () => {
		const { calendar } = makePlan(testInputs());
		const trim = calendar.find(({ id }) => id === 'trim');
		const cure = calendar.find(({ id }) => id === 'gloveCure');
		expect(trim?.startAt.slice(0, 10)).not.toBe(cure?.startAt.slice(0, 10));
	});
});
