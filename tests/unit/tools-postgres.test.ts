import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import type { Db } from '../../src/lib/server/database';
import { verifyStore } from '../../src/lib/server/keep/verify-store';
import { openPostgresStore } from '../../src/lib/server/postgres-start';
import { openStore } from '../../src/lib/server/store';
import { runTool } from '../../src/tools/tools';
import { fillShop } from '../fixtures/filled-shop';
import { newDatabase } from '../fixtures/postgres-database';
import { tempFolder } from '../fixtures/server-store';

/** What a shop comes to: counts and the head of each job's chain. */
async function standing(db: Db) {
	const check = await verifyStore(db);
	await db.destroy();
	return check;
}

/** A shop in PostgreSQL and the commands told of it, as whoever looks after the server tells them. */
async function shopInPostgres() {
	const url = await newDatabase();
	const db = await openPostgresStore(url);
	await fillShop(db);
	const before = await standing(db);
	const folder = tempFolder();
	vi.stubEnv('DATABASE_URL', url);
	vi.stubEnv('GLOVEWRIGHT_DATA', folder);
	onTestFinished(() => void vi.unstubAllEnvs());
	return { before, folder };
}

test('a backup of PostgreSQL by its command is restored by its command into an empty database', async () => {
	const { before, folder } = await shopInPostgres();
	const made = await runTool(['backup']);
	expect(made).toMatchObject({ code: 0, lines: [expect.stringMatching(/\.zip, \d+ bytes/)] });
	const name = readdirSync(join(folder, 'backups')).find((file) => file.endsWith('.zip')) ?? '';
	const file = join(folder, 'backups', name);

	expect(await runTool(['restore', file])).toMatchObject({
		code: 1,
		lines: [expect.stringMatching(/a shop in this store already/)]
	});
	const empty = await newDatabase({ isEmpty: true });
	vi.stubEnv('DATABASE_URL', empty);
	expect(await runTool(['restore', file])).toMatchObject({
		code: 0,
		lines: [expect.stringMatching(/verified whole/)]
	});
	expect(await standing(await openPostgresStore(empty))).toEqual(before);
});

test('the same backup moves the shop to a file, with nobody’s PIN lost', async () => {
	const { before, folder } = await shopInPostgres();
	await runTool(['backup']);
	const [name = ''] = readdirSync(join(folder, 'backups')).filter((file) => file.endsWith('.zip'));
	vi.stubEnv('DATABASE_URL', '');
	vi.stubEnv('GLOVEWRIGHT_DATA', join(folder, 'moved'));
	const { code, lines } = await runTool(['restore', join(folder, 'backups', name)]);
	expect({ code, pins: lines.filter((line) => line.includes('PIN')) }).toEqual({
		code: 0,
		pins: []
	});
	expect(await standing(await openStore(join(folder, 'moved')))).toEqual(before);
});

test('a copy of a SQLite file is refused for PostgreSQL with the way to do it', async () => {
	await shopInPostgres();
	expect(await runTool(['restore', 'glovewright-20260302T140000Z.db'])).toMatchObject({
		code: 1,
		lines: [expect.stringMatching(/an export \(\.zip\) is read/)]
	});
});
