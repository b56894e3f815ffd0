import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { commitTogether } from '../../src/lib/server/commit-together';
import type { Db } from '../../src/lib/server/database';
import { saveSetting } from '../../src/lib/server/devices';
import { AT } from '../fixtures/server-store';
import { newPlace, openPlace, testStore } from '../fixtures/test-store';

const settings = async (db: Db) =>
	(await db.selectFrom('setting').select('name').orderBy('name').execute()).map(({ name }) => name);

test('what fails takes back its own writes and no other’s, and each is told its own', async () => {
	const db = await testStore();
	const work = (name: string) =>
		commitTogether(db, name, async (trx) => {
			await saveSetting(trx, name, AT);
			if (name === 'b') throw new Error('b is not taken');
			return name;
		});
	const told = await Promise.allSettled(['a', 'b', 'c'].map(work));
	expect(told).toEqual([
		{ status: 'fulfilled', value: 'a' },
		{ status: 'rejected', reason: new Error('b is not taken') },
		{ status: 'fulfilled', value: 'c' }
	]);
	expect(await settings(db)).toEqual(['a', 'c']);
});

test('a statement that the store refuses spoils no other work', async () => {
	const db = await testStore();
	const insert = (name: string) =>
		commitTogether(db, name, (trx) =>
			trx.insertInto('setting').values({ name, value: '' }).execute()
		);
	const told = await Promise.allSettled([insert('a'), insert('a'), insert('b')]);
	// Which of the two that are alike comes first is the database's affair.
	expect(told.slice(0, 2).map(({ status }) => status)).toSatisfy(
		(two: string[]) => two.includes('fulfilled') && two.includes('rejected')
	);
	expect(told[2]?.status).toBe('fulfilled');
	expect(await settings(db)).toEqual(['a', 'b']);
});

test('whoever is answered finds it in another connection', async () => {
	const place = await newPlace();
	const db = await testStore(place);
	const other = await openPlace(place);
	const seen = await Promise.all(
		Array.from({ length: 70 }, async (_, n) => {
			const name = `setting ${n}`;
			await commitTogether(db, name, (trx) => saveSetting(trx, name, AT));
			return (await settings(other)).includes(name);
		})
	);
	await other.destroy();
	expect(seen.filter(Boolean)).toHaveLength(70);
});

test('when the commit itself fails nobody is told that it was written', async () => {
	const db = await testStore();
	// A promise of the schema that is only looked at as it commits.
	await sql`create table due (id integer primary key, of integer references due (id) deferrable initially deferred)`.execute(
		db
	);
	const work = (id: number, of: number) =>
		commitTogether(db, `due ${id}`, (trx) =>
			sql`insert into due values (${id}, ${of})`.execute(trx)
		);
	const told = await Promise.allSettled([work(1, 1), work(2, 99)]);
	const { rows } = await sql<{ id: number }>`select id from due`.execute(db);
	const written = told.flatMap(({ status }, n) => (status === 'fulfilled' ? [n + 1] : []));
	expect(rows.map(({ id }) => id)).toEqual(written);
	expect(told[1]?.status).toBe('rejected');
	await sql`drop table due`.execute(db);
});

test('later work is not held up by what failed before', async () => {
	const db = await testStore();
	await expect(
		commitTogether(db, 'x', async () => {
			throw new Error('no');
		})
	).rejects.toThrow('no');
	await commitTogether(db, 'y', (trx) => saveSetting(trx, 'y', AT));
	expect(await settings(db)).toEqual(['y']);
});
