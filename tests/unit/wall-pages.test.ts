import { expect, test } from 'vitest';
import type { BoardLine } from '$lib/screen/board/board-line';
import { wallPages } from '$lib/screen/board/wall-pages';

const NOW = '2026-11-25T16:20:00.000Z';
const later = (minutes: number) => new Date(Date.parse(NOW) + minutes * 60_000).toISOString();
const mold = (id: string, closes: number | null): BoardLine => ({
	id,
	title: id,
	status: 'open',
	phase: 'build',
	phaseTitle: 'Build coats',
	step: 'Build coat 2',
	nextAct: '',
	nextActPast: null,
	openDeviations: 0,
	workerId: null,
	worker: '',
	workers: [],
	window:
		closes === null
			? null
			: { label: 'Recoat window', opensAt: later(-60), closesAt: later(closes) },
	ask: null,
	progress: { done: 1, of: 9 },
	openedAt: later(-600),
	lastAt: later(-30),
	section: null
});
const calm = Array.from({ length: 11 }, (_, i) => mold(`calm ${i}`, 300 + i));

test('every mold is on some page once, five on a page', () => {
	const pages = wallPages(calm, 5, NOW);
	expect(pages.map(({ lines }) => lines.length)).toEqual([5, 5, 1]);
	expect(new Set(pages.flatMap(({ lines }) => lines.map(({ id }) => id))).size).toBe(11);
});

test('a window that closes stays in sight on every page, and so does a trouble', () => {
	const trouble = { ...mold('trouble', null), ask: { kind: 'trouble' as const, text: 'Foam' } };
	const pages = wallPages([...calm, mold('closing', 4), trouble], 5, NOW);
	expect(pages).toHaveLength(4);
	for (const { pinned, lines } of pages) {
		expect(pinned.map(({ id }) => id)).toEqual(['trouble', 'closing']);
		expect(lines.length).toBeLessThanOrEqual(3);
	}
	expect(pages.flatMap(({ lines }) => lines)).toHaveLength(11);
});

test('one page needs nothing held in sight', () => {
	expect(wallPages([mold('closing', 4)], 5, NOW)).toMatchObject([{ pinned: [] }]);
	expect(wallPages([], 5, NOW)).toEqual([{ pinned: [], lines: [] }]);
});
