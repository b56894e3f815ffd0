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

test('more closing than a page has rows for: all rows but one hold the first to shut, and each page counts the rest', () => {
	// Nine windows of more than an hour, all of them in their last ten minutes.
	const closing = Array.from({ length: 9 }, (_, i) => mold(`closing ${i + 1}`, i + 1));
	const pages = wallPages([...calm, ...closing.toReversed()], 5, NOW);
	const all = new Set<string>();
	for (const { pinned, lines, pressElsewhere } of pages) {
		expect(pinned.map(({ id }) => id)).toEqual(closing.slice(0, 4).map(({ id }) => id));
		const ids = [...pinned, ...lines].map(({ id }) => id);
		expect(ids.length).toBeLessThanOrEqual(5);
		const inSight = ids.filter((id) => id.startsWith('closing')).length;
		expect(inSight + pressElsewhere, 'in sight or counted').toBe(9);
		for (const id of ids) all.add(id);
	}
	expect(pages[0]?.pressElsewhere, 'where pages stand still').toBe(4);
	expect(all.size, 'every mold has its turn').toBe(20);
});

test('three and four that close are all on every page, and nothing is left to count', () => {
	for (const count of [3, 4]) {
		const closing = Array.from({ length: count }, (_, i) => mold(`closing ${i}`, i + 1));
		for (const { pinned, pressElsewhere } of wallPages([...calm, ...closing], 5, NOW)) {
			expect(pinned).toHaveLength(count);
			expect(pressElsewhere).toBe(0);
		}
	}
});

test('one page needs nothing held in sight', () => {
	expect(wallPages([mold('closing', 4)], 5, NOW)).toMatchObject([{ pinned: [] }]);
	expect(wallPages([], 5, NOW)).toEqual([{ pinned: [], lines: [], pressElsewhere: 0 }]);
});
