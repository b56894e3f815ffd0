import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { openDatabase } from '../../src/lib/server/database';
import { migrate } from '../../src/lib/server/migrate';
import { addPerson } from '../../src/lib/server/people.repository';
import { personOfSession, startSession } from '../../src/lib/server/sessions';
import { openStore } from '../../src/lib/server/store';
import { storageProblem } from '../../src/lib/server/storage-problem';
import { AT, storedJob, tempFolder } from '../fixtures/server-store';

test('a SQLite store is a log on the disk, written through, with its keys held', async () => {
	const db = await openStore(tempFolder());
	const pragma = async (name: string) =>
		Object.values(
			(await sql.raw<Record<string, unknown>>(`pragma ${name}`).execute(db)).rows[0] ?? {}
		)[0];
	expect(await pragma('journal_mode')).toBe('wal');
	// 2 is FULL. Source: SQLite documentation, PRAGMA synchronous.
	expect(await pragma('synchronous')).toBe(2);
	expect(await pragma('foreign_keys')).toBe(1);
	await db.destroy();
});

test('nothing logged can be replaced', async () => {
	const db = await openStore(tempFolder());
	await storedJob(db, 'pattern');
	for (const table of ['event', 'job']) {
		const replace = `insert or replace into ${table} select * from ${table}`;
		await expect(sql.raw(replace).execute(db)).rejects.toThrow(/written once and never changed/);
	}
	await db.destroy();
});

test('a data folder that is a file is refused with its name', async () => {
	const file = join(tempFolder(), 'data');
	writeFileSync(file, 'not a folder');
	await expect(openStore(file)).rejects.toThrow(`The data folder ${file} cannot be written`);
});

test('a file that is no database is refused and left as it was', async () => {
	const folder = tempFolder();
	writeFileSync(
		join(folder, 'glovewright.db'),
		'these are not the bytes of a database file'.repeat(50)
	);
	await expect(openStore(folder)).rejects.toMatchObject({ name: 'StartError' });
});

test('a folder this user may not write is refused', () => {
	const folder = join(tempFolder(), 'locked');
	mkdirSync(folder);
	chmodSync(folder, 0o555);
	const probe = `require('node:fs').accessSync(process.argv[1], 2)`;
	// Root may write anywhere, so the question is asked as nobody.
	const asNobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
	const { status, stderr } = spawnSync(process.execPath, ['-e', probe, folder], asNobody);
	expect(status).not.toBe(0);
	expect(String(stderr)).toContain('EACCES');
});

test('people go on reading when nothing can be written', async () => {
	const db = openDatabase(join(tempFolder(), 'read-only.db'));
	await migrate(db, AT);
	const { id } = await addPerson(db, { name: 'Ada Quill', role: 'supervisor', pin: '2468' });
	const token = await startSession(db, id, AT);
	const twoMinutesLater = '2026-03-02T14:02:00.000Z';
	await sql`pragma query_only = on`.execute(db);
	expect(await personOfSession(db, token, twoMinutesLater)).toMatchObject({ id });
	await sql`pragma query_only = off`.execute(db);
	await db.destroy();
});

test('on a full disk nothing is half written, and the answer says what happened', async () => {
	const file = join(tempFolder(), 'full.db');
	const db = openDatabase(file);
	await migrate(db, AT);
	const { acts } = await storedJob(db, 'frame');
	const pages = await sql<{ page_count: number }>`pragma page_count`.execute(db);
	await sql.raw(`pragma max_page_count = ${pages.rows[0]?.page_count ?? 1}`).execute(db);

	let failure: unknown = null;
	let opened = 0;
	while (failure === null && opened < 200) {
		opened += 1;
		failure = await storedJob(db, 'brief', `job-after-${opened}`).then(
			() => null,
			(error: unknown) => error
		);
	}
	expect(storageProblem(failure)).toMatchObject({ status: 507, code: 'disk-full' });
	const jobs = await db.selectFrom('job').select('id').execute();
	const firsts = await db.selectFrom('event').select('job_id').where('seq', '=', 1).execute();
	expect(firsts.map((row) => row.job_id).sort()).toEqual(jobs.map((row) => row.id).sort());

	await sql.raw('pragma max_page_count = 1000000').execute(db);
	const { acts: later } = await storedJob(db, 'frame', 'job-with-room');
	expect(later).toHaveLength(acts.length);
	await db.destroy();
});
