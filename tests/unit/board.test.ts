import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
	arrangeBoard,
	filterBoard,
	isEnded,
	needsViewer,
	phaseOfLine
} from '$lib/screen/board/arrange-board';
import { boardLine, type BoardLine } from '$lib/screen/board/board-line';
import { boardQuery } from '$lib/screen/board/board-query';
import type { Db } from '$lib/server/database';
import { demo } from '$lib/server/demo-content';
import { seedDemo } from '$lib/server/demo';
import { namesById } from '$lib/server/job-or-error';
import { listJobs } from '$lib/server/jobs.repository';
import { newPlace, openPlace } from '../fixtures/test-store';

const NOW = '2026-11-25T16:20:00.000Z';
const later = (minutes: number) => new Date(Date.parse(NOW) + minutes * 60_000).toISOString();
const nobody = { id: 'nobody', maySign: false };

function line(over: Partial<BoardLine>): BoardLine {
	return {
		id: 'a',
		title: 'Cap',
		status: 'open',
		phase: 'build',
		phaseTitle: 'Build coats',
		step: 'Build coat 2',
		nextAct: 'Cup is weighed',
		nextActPast: null,
		openDeviations: 0,
		workerId: 'ann',
		worker: 'Ann',
		workers: ['ann'],
		window: null,
		ask: null,
		progress: { done: 3, of: 20 },
		openedAt: later(-600),
		lastAt: later(-30),
		section: null,
		...over
	};
}
const windowed = (id: string, opens: number, closes: number | null) =>
	line({
		id,
		window: {
			label: 'Recoat window',
			opensAt: later(opens),
			closesAt: closes === null ? null : later(closes)
		}
	});
const all = boardQuery(new URLSearchParams('status=all'));
const idsOf = (lines: readonly BoardLine[]) => lines.map(({ id }) => id);

describe('the board in order of urgency', () => {
	test('a supervisor’s work comes first, a trouble before a signature', () => {
		const groups = arrangeBoard(
			[
				windowed('closing', -60, 2),
				line({ id: 'sign', ask: { kind: 'signature', text: '' }, lastAt: later(-90) }),
				line({ id: 'trouble', ask: { kind: 'trouble', text: '' } })
			],
			'urgency',
			NOW
		);
		expect(groups.map(({ id }) => id)).toEqual(['supervisor', 'open']);
		expect(idsOf(groups[0]?.lines ?? [])).toEqual(['trouble', 'sign']);
	});

	test('open windows stand by the end that comes next, waits by their beginning', () => {
		const groups = arrangeBoard(
			[
				windowed('soon', 10, null),
				windowed('open', -5, 60),
				windowed('never shuts', -5, null),
				windowed('shut', -60, -3),
				windowed('later', 90, 120),
				windowed('closing', -60, 4)
			],
			'urgency',
			NOW
		);
		expect(groups.map((group) => [group.id, idsOf(group.lines)])).toEqual([
			['open', ['shut', 'closing', 'open', 'never shuts']],
			['waiting', ['soon', 'later']]
		]);
	});

	test('every line stands in exactly one group, whatever the order', () => {
		const any = fc.record({
			id: fc.uuid(),
			status: fc.constantFrom('open', 'paused', 'in trouble', 'handed over', 'abandoned'),
			asked: fc.boolean(),
			opens: fc.integer({ min: -500, max: 500 }),
			closes: fc.option(fc.integer({ min: -500, max: 500 })),
			hasWindow: fc.boolean()
		});
		fc.assert(
			fc.property(
				fc.array(any, { maxLength: 30 }),
				fc.constantFrom('urgency', 'name', 'start'),
				(drawn, sort) => {
					const lines = drawn.map(({ id, status, asked, opens, closes, hasWindow }) => ({
						...(hasWindow ? windowed(id, opens, closes) : line({ id })),
						status: status as BoardLine['status'],
						ask: asked ? { kind: 'signature' as const, text: '' } : null
					}));
					const placed = arrangeBoard(lines, sort as 'name', NOW).flatMap((g) => idsOf(g.lines));
					expect(placed.toSorted()).toEqual(idsOf(lines).toSorted());
				}
			)
		);
	});
});

describe('what waits for whom', () => {
	const asked = line({ ask: { kind: 'signature', text: 'Ready to coat' } });

	test('nobody is asked to sign a mold they worked on', () => {
		expect(needsViewer(asked, { id: 'ann', maySign: true }, NOW)).toBe(false);
		expect(needsViewer(asked, { id: 'bo', maySign: true }, NOW)).toBe(true);
		expect(needsViewer(asked, { id: 'bo', maySign: false }, NOW)).toBe(false);
	});

	test('a wait calls its worker when the window opens, not before', () => {
		const wait = windowed('w', 0, 30);
		const ann = { id: 'ann', maySign: false };
		expect(needsViewer(wait, ann, later(-1))).toBe(false);
		expect(needsViewer(wait, ann, later(0))).toBe(true);
	});

	test('a window that shuts before its last place can be tested presses until it shuts', () => {
		const odd = windowed('odd', 30, 10);
		expect(phaseOfLine(odd, later(5))).toBe('closing');
		expect(phaseOfLine(odd, later(20))).toBe('closed');
	});
});

describe('what is asked for in the address', () => {
	test('unknown words count as not said', () => {
		const query = boardQuery(
			new URLSearchParams('show=everything&phase=lunch&status=&sort=<b>&q=' + 'x'.repeat(500))
		);
		expect(query).toMatchObject({ show: 'all', phase: '', status: 'running', sort: 'urgency' });
		expect(query.q).toHaveLength(120);
	});

	test('words are found in name, person and phase together', () => {
		const lines = [line({ id: 'x' }), line({ id: 'y', worker: 'Bo', phaseTitle: 'Trim' })];
		const find = (q: string) => idsOf(filterBoard(lines, { ...all, q }, nobody, NOW));
		expect(find('cap BO')).toEqual(['y']);
		expect(find('build ann')).toEqual(['x']);
		expect(find('cap zebra')).toEqual([]);
	});
});

describe('the invented shop on the board', () => {
	let db: Db;
	let lines: BoardLine[];

	beforeAll(async () => {
		db = await openPlace(await newPlace());
		await seedDemo(db, NOW);
		const names = await namesById(db);
		lines = (await listJobs(db)).map((job) => boardLine(job, names));
	}, 60_000);
	afterAll(() => db.destroy());

	test('every mold has a line, and every worker a name', () => {
		const names = demo.people.map(({ name }) => name);
		for (const { worker, workerId } of lines) {
			if (workerId !== null) expect(names).toContain(worker);
		}
		const running = filterBoard(lines, boardQuery(new URLSearchParams()), nobody, NOW);
		expect(running.length + lines.filter(isEnded).length).toBe(lines.length);
	});

	test('a trouble, a decision and a signature each say what they are about', () => {
		const kinds = lines.flatMap(({ ask }) => (ask ? [ask.kind] : []));
		expect(kinds.toSorted()).toEqual(['deviation', 'signature', 'trouble']);
		for (const { ask } of lines) if (ask) expect(ask.text.length).toBeGreaterThan(5);
	});

	test('a damaged record is a line of its own and needs a supervisor', () => {
		const damaged = boardLine(
			{ id: 'd', openedAt: NOW, title: 'Record damaged', state: null, damage: 'Broken.' },
			{}
		);
		const [first] = arrangeBoard([...lines, damaged], 'name', NOW);
		expect(first?.id).toBe('supervisor');
		expect(idsOf(first?.lines ?? [])).toContain('d');
	});
});
