import { expect, test } from 'vitest';
import { keptQuery } from '../../src/lib/server/kept-query';
import { testStore } from '../fixtures/test-store';

const write = keptQuery((db, { name, value }: { name: string; value: string }) =>
	db.insertInto('setting').values({ name, value })
);
const read = keptQuery((db, { name, not }: { name: string; not: string }) =>
	db
		.selectFrom('setting')
		.select('value')
		.where('value', '!=', not)
		.where('name', '=', name)
		.where('name', '!=', 'kept out')
);

test('each asking is answered for its own values, whatever their order, in a transaction too', async () => {
	const db = await testStore();
	await write(db, { name: 'a', value: 'one' });
	await write(db, { value: 'two', name: 'b' });
	await write(db, { name: 'kept out', value: 'three' });
	expect(await read(db, { name: 'a', not: 'two' })).toEqual([{ value: 'one' }]);
	expect(await read(db, { not: 'one', name: 'b' })).toEqual([{ value: 'two' }]);
	expect(await read(db, { name: 'a', not: 'one' })).toEqual([]);
	expect(await read(db, { name: 'kept out', not: '' })).toEqual([]);
	await expect(
		db.transaction().execute(async (trx) => {
			await write(trx, { name: 'c', value: 'four' });
			expect(await read(trx, { name: 'c', not: '' })).toEqual([{ value: 'four' }]);
			throw new Error('taken back');
		})
	).rejects.toThrow('taken back');
	expect(await read(db, { name: 'c', not: '' })).toEqual([]);
});

test('of two stores each is asked itself', async () => {
	const [one, other] = [await testStore(), await testStore()];
	await write(one, { name: 'a', value: 'here' });
	expect(await read(other, { name: 'a', not: '' })).toEqual([]);
	expect(await read(one, { name: 'a', not: '' })).toEqual([{ value: 'here' }]);
});
