import { expect, test } from 'vitest';
import { createJob, listJobs, NotOpened } from '../../src/lib/server/jobs.repository';
import { nextMoldTitle, titleRefusal } from '../../src/lib/server/mold-titles';
import { handPlan } from '../fixtures/plan';
import { AT, CREW } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const NAME = handPlan().inputs.pattern.name;
const opening = { plan: handPlan(), by: CREW.supervisor, at: AT, content: {} };

test('molds of a pattern are numbered in the order they are opened', async () => {
	const db = await testStore();
	const titles: string[] = [];
	for (let i = 1; i <= 3; i += 1) {
		const title = await nextMoldTitle(db, NAME);
		titles.push(title);
		await createJob(db, { ...opening, id: `job-0000${i}`, title });
	}
	expect(titles).toEqual([1, 2, 3].map((number) => `${NAME}, mold ${number}`));
	expect((await listJobs(db)).map(({ title }) => title).sort()).toEqual(titles);
	expect(await nextMoldTitle(db, 'Another pattern')).toBe('Another pattern, mold 1');
});

test('a mold without a number counts as the first, and a number left out is not given again', async () => {
	const db = await testStore();
	await createJob(db, { ...opening, id: 'job-00001' });
	expect(await nextMoldTitle(db, NAME)).toBe(`${NAME}, mold 2`);
	await createJob(db, { ...opening, id: 'job-00007', title: `${NAME}, mold 7: glove mold` });
	expect(await nextMoldTitle(db, NAME)).toBe(`${NAME}, mold 8`);
});

test('a name of 120 letters leaves room for its number, and is counted on', async () => {
	const db = await testStore();
	const long = 'x'.repeat(120);
	const first = await nextMoldTitle(db, long);
	expect(first).toHaveLength(120);
	expect(first).toMatch(/x, mold 1$/);
	await createJob(db, { ...opening, id: 'job-00001', title: first });
	expect(await nextMoldTitle(db, long)).toMatch(/x, mold 2$/);
});

test('the name of a running mold is refused however it is spaced, but not to that mold itself', async () => {
	const db = await testStore();
	await createJob(db, { ...opening, id: 'job-00001', title: 'Cap, mold 1' });
	expect(await titleRefusal(db, ' cap,  Mold 1')).toContain('accepted: a name');
	expect(await titleRefusal(db, 'Cap, mold 1', 'job-00001')).toBeNull();
	expect(await titleRefusal(db, 'Cap, mold 2')).toBeNull();
});

test('of two molds opened at once under one name, one is opened and the other is told why', async () => {
	const db = await testStore();
	const open = (id: string) =>
		createJob(db, {
			...opening,
			id,
			title: 'Cap, mold 1',
			refused: (trx) => titleRefusal(trx, 'Cap, mold 1', id)
		});
	const answers = await Promise.allSettled(['job-00001', 'job-00002', 'job-00003'].map(open));
	const refused = answers.flatMap((answer): unknown[] =>
		answer.status === 'rejected' ? [answer.reason] : []
	);
	expect(refused).toHaveLength(2);
	for (const reason of refused) expect(reason).toBeInstanceOf(NotOpened);
	expect(await listJobs(db)).toHaveLength(1);
	// Asked twice for the same mold, it is the one that is there.
	const [line] = await listJobs(db);
	expect(await open(line?.id ?? '')).toBe(line?.id);
});
