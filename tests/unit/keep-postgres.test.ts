import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { listBackups } from '../../src/lib/server/keep/backup-folder';
import { makeBackup } from '../../src/lib/server/keep/make-backup';
import { ShopExport } from '../../src/lib/server/keep/read-export';
import * as meshFiles from '../../src/lib/server/mesh-files';
import { openPostgresStore } from '../../src/lib/server/postgres-start';
import { fillShop } from '../fixtures/filled-shop';
import { newDatabase } from '../fixtures/postgres-database';
import { AT, tempFolder } from '../fixtures/server-store';

test('a backup of a database counts only when it is whole', async () => {
	const url = await newDatabase();
	const db = await openPostgresStore(url);
	await fillShop(db);
	await db.destroy();
	vi.stubEnv('DATABASE_URL', url);
	onTestFinished(() => {
		vi.unstubAllEnvs();
		vi.restoreAllMocks();
	});
	const backups = join(tempFolder(), 'backups');
	let counted: unknown[] = ['not looked at'];
	vi.spyOn(meshFiles, 'openMesh').mockImplementationOnce(async () => {
		counted = listBackups(backups);
		throw new Error('the disk is full');
	});
	await expect(makeBackup({ file: null }, backups, AT)).rejects.toThrow('the disk is full');
	expect(counted).toEqual([]);
	expect(readdirSync(backups)).toEqual([]);

	const made = await makeBackup({ file: null }, backups, AT);
	expect(made.faults).toEqual([]);
	expect(readdirSync(backups)).toEqual(['glovewright-20260302T140000Z.zip', 'last.json']);
	const zip = new ShopExport(made.file);
	expect(zip.manifest).toMatchObject({ hasPins: true, jobs: [{ id: 'job-00001' }] });
	zip.close();
});
