import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { contextOf, type JobState } from '$lib/core/process/job';
import { addSeconds, secondsBetween } from '$lib/core/process/instant';
import type { Db } from '$lib/server/database';
import { demo } from '$lib/server/demo-content';
import { demoPins, seedDemo } from '$lib/server/demo';
import { DEMO_MOLDS } from '$lib/server/demo-molds';
import { writeJob } from '$lib/server/demo-write';
import type { JobLine } from '$lib/server/job-line';
import { listJobs } from '$lib/server/jobs.repository';
import { listPatterns } from '$lib/server/patterns.repository';
import { listPeople } from '$lib/server/people.repository';
import { checkPin } from '$lib/server/pin';
import { listSheets } from '$lib/server/sheets.repository';
import { getShop } from '$lib/server/shop.repository';
import { manyMolds } from '../fixtures/many-molds';
import { newPlace, openPlace } from '../fixtures/test-store';

async function emptyStore(): Promise<Db> {
	return openPlace(await newPlace());
}

// A workday morning in the shop, and a Sunday night.
describe.each(['2026-11-25T16:20:00.000Z', '2026-11-29T08:00:00.000Z'])(
	'the demo seeded at %s',
	(at) => {
		let db: Db;
		let jobs: JobLine[];

		beforeAll(async () => {
			db = await emptyStore();
			await seedDemo(db, at);
			jobs = await listJobs(db);
		}, 60_000);
		afterAll(() => db.destroy());

		const titled = (title: string): JobState => {
			const state = jobs.find((job) => job.title.startsWith(title))?.state;
			if (!state)
				throw new Error(`no job "${title}" among: ${jobs.map((j) => j.title).join('; ')}`);
			return state;
		};

		it('has the shop, its people, sheets and patterns, each marked as invented', async () => {
			expect(await getShop(db)).toEqual(demo.shop);
			expect(await listPeople(db)).toHaveLength(demo.people.length);
			expect(await listSheets(db)).toHaveLength(demo.sheets.length);
			expect(await listPatterns(db)).toHaveLength(demo.patterns.length);
			for (const { title } of jobs) expect(title).toMatch(/invented/);
		});

		it('lets an invented person sign in with the PIN that is shown', async () => {
			const [shown] = demoPins();
			const person = (await listPeople(db)).find(({ name }) => name === shown?.name);
			const address = '127.0.0.1';
			const pin = shown?.pin ?? '';
			expect(await checkPin(db, { personId: person?.id ?? '', pin, address, at })).toEqual({
				ok: true
			});
		});

		it('has no damaged job: every plan matches its hash, every chain holds, every act was taken', () => {
			expect(jobs).toHaveLength(DEMO_MOLDS.length);
			expect(jobs.filter(({ damage }) => damage !== null)).toEqual([]);
		});

		it('has nothing dated later than now', () => {
			for (const { state } of jobs) {
				expect(secondsBetween(state?.lastAt ?? '', at)).toBeGreaterThanOrEqual(0);
			}
		});

		it('has a coat ready for its fingertip test', () => {
			const c = contextOf(titled('Bollard cap, stepped (invented), mold 1'));
			expect(c.coatIndex).toBe(1);
			const coat = c.coats[c.coatIndex];
			expect(secondsBetween(addSeconds(c.finishedAt ?? '', coat?.tackTestS ?? 0), at)).toBe(60);
			expect(c.tackPassed).toBe(false);
		});

		it('has a window that closes in twelve minutes', () => {
			const c = contextOf(titled('Relief panel, reeds and herons (invented), mold 1'));
			expect(secondsBetween(at, c.windowClosesAt ?? '')).toBe(720);
			expect(c.tackPassed).toBe(true);
		});

		it('has a mold that waits for a signature before the shell', () => {
			const c = contextOf(titled('Bollard cap, stepped (invented), mold 2'));
			expect(c.hold).toBe('readyForShell');
			expect(secondsBetween(c.holdRequestedAt ?? '', at)).toBe(18 * 60);
		});

		it('has a mold in trouble with bubbles', () => {
			const c = contextOf(titled('Relief panel, reeds and herons (invented), mold 2'));
			expect(c.trouble?.id).toBe('bubbles');
			expect(c.phase).toBe('build');
		});

		it('has a glove that cures for five more hours', () => {
			const c = contextOf(
				titled('Newel cap with stepped ring, east stair, invented, long name, mold 1')
			);
			expect(c.phase).toBe('gloveCure');
			const opensAt = addSeconds(c.finishedAt ?? '', c.plan.gloveCure.testS);
			expect(secondsBetween(at, opensAt)).toBe(5 * 3600 + 20 * 60);
		});

		it('has a cup put right and a missed window that waits for a decision', () => {
			const state = titled('Bollard cap, stepped (invented), mold 3');
			const open = contextOf(state).deviations.filter(
				({ blocking, decided }) => blocking && !decided
			);
			expect(open).toHaveLength(1);
			const weighings = state.effective.map(({ event }) => event.type).join(' ');
			expect(weighings).toContain('cup.weighed cup.weighed cup.mixed');
		});

		it('has a shell with one cup in hand and the next one on the scale, for two at work', () => {
			const c = contextOf(titled('Relief panel, reeds and herons (invented), mold 3'));
			expect([c.phase, c.cupsLaid, c.plan.people]).toEqual(['shell', 1, 2]);
			expect(c.cup?.mixedAt).toBeTruthy();
			expect(c.cupAhead).toMatchObject({ mixedAt: null });
			expect(secondsBetween(at, c.windowClosesAt ?? '')).toBeGreaterThan(0);
		});

		it('has a mold handed over with all four signatures', () => {
			const state = titled('Newel cap with stepped ring, east stair, invented, long name, mold 2');
			expect(state.snapshot.value).toBe('handedOver');
			expect(Object.keys(contextOf(state).signatures)).toHaveLength(4);
		});

		it('has one that is paused and one that was abandoned', () => {
			expect(contextOf(titled('Small tile with a boss (invented), mold 1')).pausedFor).toBeTruthy();
			expect(titled('Small tile with a boss (invented), mold 2').snapshot.value).toBe('abandoned');
		});

		it('is seeded once: a store with a shop stays as it is', async () => {
			await seedDemo(db, at);
			expect(await listJobs(db)).toHaveLength(DEMO_MOLDS.length);
		});
	}
);

describe('a shop with many molds', () => {
	test('lists them all, none damaged', { timeout: 60_000 }, async () => {
		const at = '2026-11-25T16:20:00.000Z';
		const db = await emptyStore();
		await seedDemo(db, at);
		const people = await listPeople(db);
		const personIds = new Map(
			demo.people.map(({ id, name }) => [id, people.find((p) => p.name === name)?.id ?? ''])
		);
		await db.transaction().execute(async (trx) => {
			for (const mold of manyMolds(demo, 40, { at, personIds, content: {} })) {
				await writeJob(trx, mold);
			}
		});
		const jobs = await listJobs(db);
		expect(jobs).toHaveLength(40 + DEMO_MOLDS.length);
		expect(jobs.filter(({ damage }) => damage !== null)).toEqual([]);
		await db.destroy();
	});
});
