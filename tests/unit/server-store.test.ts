import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { migrate } from '../../src/lib/server/migrate';
import { AT, storedJob } from '../fixtures/server-store';
import { newPlace, openPlace, testStore } from '../fixtures/test-store';

test('a store is opened twice without losing anything', async () => {
	const place = await newPlace();
	const first = await openPlace(place);
	await storedJob(first, 'pattern');
	await first.destroy();
	const { n } = await (
		await testStore(place)
	)
		.selectFrom('event')
		.select((e) => e.fn.countAll<number>().as('n'))
		.executeTakeFirstOrThrow();
	expect(n).toBeGreaterThan(3);
});

test('a store of a newer version is refused with a sentence and left alone', async () => {
	const db = await testStore(await newPlace());
	const future = { version: 99, name: 'from the future', applied_at: AT };
	await db.insertInto('schema_version').values(future).execute();
	const before = await db.selectFrom('schema_version').selectAll().execute();
	await expect(migrate(db, AT)).rejects.toThrow(/newer Glovewright \(schema 99/);
	await expect(migrate(db, AT)).rejects.toMatchObject({ name: 'StartError' });
	expect(await db.selectFrom('schema_version').selectAll().execute()).toEqual(before);
});

test('what was logged can be neither changed nor deleted', async () => {
	const db = await testStore();
	await storedJob(db, 'pattern');
	const again = /written once and never changed/;
	for (const table of ['event', 'job']) {
		await expect(sql.raw(`update ${table} set id = id`).execute(db)).rejects.toThrow(again);
		await expect(sql.raw(`delete from ${table}`).execute(db)).rejects.toThrow(again);
	}
});

test('a text is not taken for a number', async () => {
	const db = await testStore();
	const insert = sql`insert into event values ('e', 'j', 'first', '{}', ${AT}, '', '')`;
	await expect(insert.execute(db)).rejects.toThrow(/integer/i);
});

test('an event of a job that is not there is not taken', async () => {
	const db = await testStore();
	const insert = sql`insert into event values ('e', 'nowhere', 1, '{}', ${AT}, '', '')`;
	await expect(insert.execute(db)).rejects.toThrow(/foreign key/i);
});

test('ids and instants are ordered by their characters, in any language', async () => {
	const db = await testStore();
	const ids = [
		'Zeta',
		'alpha',
		'_x',
		'-y',
		'2026-01-01T00:00:00.000Z',
		'2026-01-01T00:00:00Z',
		'ähre'
	];
	for (const id of ids) {
		await db.insertInto('pattern').values({ id, body: '{}', updated_at: AT }).execute();
	}
	const rows = await db.selectFrom('pattern').select('id').orderBy('id').execute();
	expect(rows.map((row) => row.id)).toEqual(ids.toSorted());
});
