import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HAZARD_IDS } from '../../src/lib/core/content/vocabulary';
import { drawRound, dueInPool, ROUND_SIZE } from '../../src/lib/core/training/round';
import { dueQuestions, standingOf, type Answered } from '../../src/lib/core/training/spacing';
import { expiryOf, isInDate } from '../../src/lib/core/training/training';
import { pools } from '../../src/lib/server/content';

const DAY_MS = 86_400_000;
const AT = '2026-03-02T08:00:00.000Z';
const days = (n: number) => new Date(Date.parse(AT) + n * DAY_MS).toISOString();
const said = (question: string, isRight: boolean, day: number): Answered => ({
	question,
	isRight,
	at: days(day)
});

describe('what was missed is asked again', () => {
	test('at once, then after 1, 4 and 12 days, then no more', () => {
		const answers = [said('a', false, 0)];
		expect(standingOf(answers).dueAt).toBe(days(0));
		answers.push(said('a', true, 0));
		expect(standingOf(answers).dueAt).toBe(days(1));
		answers.push(said('a', true, 1));
		expect(standingOf(answers).dueAt).toBe(days(5));
		answers.push(said('a', true, 5));
		expect(standingOf(answers).dueAt).toBe(days(17));
		answers.push(said('a', true, 17));
		expect(standingOf(answers).dueAt).toBeNull();
	});

	test('a right answer before its time moves nothing, and a miss begins anew', () => {
		const early = [said('a', false, 0), said('a', true, 0), said('a', true, 0.5)];
		expect(standingOf(early).dueAt).toBe(days(1));
		const late = [...early, said('a', true, 1), said('a', false, 2)];
		expect(standingOf(late).dueAt).toBe(days(2));
		expect(standingOf([said('b', true, 0)]).dueAt).toBeNull();
	});

	test('is counted as long as it is among the questions', () => {
		const pool = [...pools.values()][0]!;
		const { id } = pool.questions[0]!;
		const answers = [said(id, false, 0), said('taken out since', false, 0)];
		expect(dueInPool(pool, answers, days(1))).toBe(1);
	});

	test('comes first in the next round, longest due on top', () => {
		const pool = pools.get('isocyanate');
		if (!pool) throw new Error('no pool');
		const [first, second] = pool.questions.slice(-2).map(({ id }) => id);
		const answers = [said(first ?? '', false, 1), said(second ?? '', false, 0)];
		expect(dueQuestions(answers, days(2))).toEqual([second, first]);
		const drawn = drawRound(pool, { answers, at: days(2), seed: 'x' });
		expect(drawn.slice(0, 2).map(({ id }) => id)).toEqual([second, first]);
		expect(drawn.map(({ isAgain }) => isAgain)).toEqual([true, true, false, false, false, false]);
		expect(dueQuestions(answers, days(-1))).toEqual([]);
	});
});

describe('a round', () => {
	test('has no question twice, one right answer in each, and is the same for the same seed', () => {
		fc.assert(
			fc.property(fc.constantFrom(...HAZARD_IDS), fc.string(), (kind, seed) => {
				const pool = pools.get(kind);
				if (!pool) return false;
				const drawn = drawRound(pool, { answers: [], at: AT, seed });
				expect(new Set(drawn.map(({ id }) => id)).size).toBe(ROUND_SIZE);
				for (const { id, answers, right } of drawn) {
					const question = pool.questions.find((q) => q.id === id);
					expect(answers[right]).toBe(question?.right);
					expect(answers.toSorted()).toEqual(
						[question?.right ?? '', ...(question?.wrong ?? [])].toSorted()
					);
				}
				expect(drawRound(pool, { answers: [], at: AT, seed })).toEqual(drawn);
			}),
			{ numRuns: 60 }
		);
	});

	test('does not tell the right answer by its place', () => {
		const pool = pools.get('isocyanate');
		if (!pool) throw new Error('no pool');
		const places = Array.from({ length: 60 }, (_, i) =>
			drawRound(pool, { answers: [], at: AT, seed: `seed ${i}` }).map(({ right }) => right)
		).flat();
		const share = places.filter((place) => place === 0).length / places.length;
		expect(share).toBeGreaterThan(0.15);
		expect(share).toBeLessThan(0.35);
	});

	test('asks what was never asked before what was', () => {
		const pool = pools.get('knife');
		if (!pool) throw new Error('no pool');
		const known = pool.questions.slice(0, ROUND_SIZE).map(({ id }) => id);
		const answers = known.map((id) => said(id, true, 0));
		const drawn = drawRound(pool, { answers, at: days(1), seed: 'y' }).map(({ id }) => id);
		const fresh = pool.questions.slice(ROUND_SIZE).map(({ id }) => id);
		expect(drawn).toEqual(expect.arrayContaining(fresh));
	});
});

describe('how long a record counts', () => {
	// Regulation (EU) 2020/1149, entry 74, paragraph 5: renewed at least every five years.
	test('on diisocyanates five years at the most', () => {
		const pool = pools.get('isocyanate');
		expect(pool?.renewMonths).toBeLessThanOrEqual(60);
		expect(pool?.renewSource).toContain('2020/1149');
		expect(expiryOf('2026-03-02T08:00:00.000Z', 60)).toBe('2031-03-02T08:00:00.000Z');
	});

	test('the last day of a month that has no such day', () => {
		expect(expiryOf('2024-02-29T10:00:00.000Z', 12)).toBe('2025-02-28T10:00:00.000Z');
		expect(expiryOf('2026-01-31T10:00:00.000Z', 1)).toBe('2026-02-28T10:00:00.000Z');
		expect(expiryOf('2026-12-31T23:00:00.000Z', 2)).toBe('2027-02-28T23:00:00.000Z');
	});

	test('ends at its instant, and without a record nothing is in date', () => {
		expect(isInDate(days(1), days(0.99))).toBe(true);
		expect(isInDate(days(1), days(1))).toBe(false);
		expect(isInDate(undefined, AT)).toBe(false);
	});
});

describe('the pools', () => {
	test('hold eight questions or more about every hazard, each with a source', () => {
		expect([...pools.keys()]).toEqual([...HAZARD_IDS]);
		for (const { hazard, questions } of pools.values()) {
			expect(questions.length, hazard).toBeGreaterThanOrEqual(8);
			for (const { source } of questions) expect(source.length).toBeGreaterThan(10);
		}
	});
});
