import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { appendEvent } from '../../src/lib/server/append';
import { openDatabase } from '../../src/lib/server/database';
import { lastBackup, listBackups } from '../../src/lib/server/keep/backup-folder';
import { backupName, backupsToDrop, backupTime } from '../../src/lib/server/keep/backup-names';
import { makeBackup } from '../../src/lib/server/keep/make-backup';
import { ageOfBackupS, isOverdue } from '../../src/lib/server/keep/schedule';
import { restoreSqlite } from '../../src/lib/server/keep/restore';
import { checkSqlite } from '../../src/lib/server/keep/sqlite-backup';
import { verifyStore } from '../../src/lib/server/keep/verify-store';
import { personOfSession, startSession } from '../../src/lib/server/sessions';
import { openStore } from '../../src/lib/server/store';
import { createJob } from '../../src/lib/server/jobs.repository';
import { handPlan } from '../fixtures/plan';
import { fillShop } from '../fixtures/filled-shop';
import { actsOf, AT, CREW, tempFolder } from '../fixtures/server-store';

async function openShop() {
	const folder = tempFolder();
	const db = await openStore(folder);
	return { folder, db, file: join(folder, 'glovewright.db'), filled: await fillShop(db) };
}

test('a backup made while acts are written is one file, whole, and as of one instant', async () => {
	const { folder, db, file } = await openShop();
	const plan = handPlan();
	await createJob(db, { id: 'job-busy', plan, by: CREW.supervisor, at: AT, content: {} });
	const acts = actsOf(plan, 'job-busy', 'end');
	const posting = (async () => {
		for (const { id, seq, event } of acts) {
			const act = { jobId: 'job-busy', id, seq, event, recordedAt: event.at, isSigned: true };
			expect((await appendEvent(db, act)).status).toBe('appended');
		}
	})();
	const made = await makeBackup({ file }, join(folder, 'backups'), '2026-03-03T01:02:03Z');
	await posting;
	expect(made.faults).toEqual([]);
	expect(readdirSync(join(folder, 'backups')).sort()).toEqual([
		'glovewright-20260303T010203Z.db',
		'last.json'
	]);
	const copy = await checkSqlite(made.file);
	const now = await verifyStore(db);
	expect(copy).toMatchObject({ faults: [], jobs: 2, photos: 1, meshes: 1 });
	const busy = copy.heads.find(({ jobId }) => jobId === 'job-busy');
	expect(busy?.seq).toBeLessThanOrEqual(acts.length + 1);
	expect(now.heads.find(({ jobId }) => jobId === 'job-busy')?.seq).toBe(acts.length + 1);
	await db.destroy();
});

test('drill: yesterday’s backup is put back, and the shop goes on from there', async () => {
	const { folder, db, file, filled } = await openShop();
	const plan = handPlan();
	await createJob(db, { id: 'job-drill', plan, by: CREW.supervisor, at: AT, content: {} });
	const [first, second] = actsOf(plan, 'job-drill', 'end');
	if (!first || !second) throw new Error('no acts');
	const put = ({ id, seq, event }: typeof first, store = db) =>
		appendEvent(store, { jobId: 'job-drill', id, seq, event, recordedAt: event.at });
	expect((await put(first)).status).toBe('appended');
	const token = await startSession(db, filled.ada.id, AT);
	const { file: backup } = await makeBackup(
		{ file },
		join(folder, 'backups'),
		'2026-03-02T20:00:00Z'
	);
	const kept = await verifyStore(db);
	expect((await put(second)).status).toBe('appended');
	await db.destroy();

	const options = { from: backup, folder, at: '2026-03-03T08:00:00Z' };
	expect(await restoreSqlite({ ...options, isReplacing: false })).toMatchObject({
		status: 'refused',
		reason: expect.stringMatching(/a store in .* already.*--replace/)
	});
	const restored = await restoreSqlite({ ...options, isReplacing: true });
	if (restored.status !== 'restored') throw new Error(restored.reason);
	expect(existsSync(restored.setAside ?? '')).toBe(true);

	const again = await openStore(folder);
	expect((await verifyStore(again)).heads).toEqual(kept.heads);
	// A session ended or begun since does not come back.
	expect(await personOfSession(again, token, AT)).toBeNull();
	// A device that still has the lost act sends it again, and it is taken; one made after it is not, and is told so.
	expect((await put(second, again)).status).toBe('appended');
	const late = { ...second, id: 'act-of-a-later-day', seq: second.seq + 5 };
	expect(await put(late, again)).toMatchObject({ status: 'conflict', headSeq: second.seq });
	await again.destroy();
});

test('a store in use is not replaced under its server', async () => {
	const { folder, db, file } = await openShop();
	const { file: from } = await makeBackup({ file }, join(folder, 'backups'), AT);
	const busy = await restoreSqlite({ from, folder, isReplacing: true, at: AT });
	expect(busy).toMatchObject({ status: 'refused', reason: expect.stringMatching(/Stop it first/) });
	expect((await verifyStore(db)).faults).toEqual([]);
	await db.destroy();
});

test('a backup that is damaged, cut or no database is not restored, and nothing is touched', async () => {
	const { folder, db, file } = await openShop();
	await db.destroy();
	const { file: backup } = await makeBackup({ file }, join(folder, 'backups'), AT);
	const whole = readFileSync(backup);
	const from = join(folder, 'bad.db');
	const target = join(tempFolder(), 'data');
	const bad: Array<[string, Uint8Array]> = [
		['no database', Buffer.from('this is no database'.repeat(100))],
		['cut', whole.subarray(0, Math.floor(whole.length / 2))],
		['empty', Buffer.alloc(0)]
	];
	for (const [name, bytes] of bad) {
		writeFileSync(from, bytes);
		const answer = await restoreSqlite({ from, folder: target, isReplacing: false, at: AT });
		expect([name, answer.status]).toEqual([name, 'refused']);
	}
	// One letter of one entry: the file itself is a good database, the record is not.
	const text = whole.toString('latin1').replaceAll('"wax.applied"', '"wax.applieD"');
	expect(text).not.toBe(whole.toString('latin1'));
	writeFileSync(from, Buffer.from(text, 'latin1'));
	expect(await restoreSqlite({ from, folder: target, isReplacing: false, at: AT })).toMatchObject({
		status: 'refused',
		reason: expect.stringMatching(/was altered.*Nothing was changed/)
	});
	expect(existsSync(join(target, 'glovewright.db'))).toBe(false);
	const gone = join(folder, 'gone.db');
	expect(
		await restoreSqlite({ from: gone, folder: target, isReplacing: false, at: AT })
	).toMatchObject({ status: 'refused' });
});

async function damagedShop() {
	const { folder, db, file } = await openShop();
	await db.destroy();
	const raw = openDatabase(file);
	const { sql } = await import('kysely');
	await sql`drop trigger event_no_update`.execute(raw);
	await sql`update event set recorded_at = '2020-01-01T00:00:00Z' where seq = 2`.execute(raw);
	await raw.destroy();
	return { file, backups: join(folder, 'backups') };
}

test('a store with a damaged record is still backed up, said to be damaged, and those from before stay', async () => {
	const { file, backups } = await damagedShop();
	mkdirSync(backups);
	for (let day = 17; day <= 28; day++) {
		writeFileSync(join(backups, backupName(`2026-02-${day}T01:00:00Z`, 'db')), '');
	}
	const made = await makeBackup({ file }, backups, AT);
	expect(made.faults).toEqual([expect.stringMatching(/event 2 was altered/)]);
	expect(listBackups(backups)).toHaveLength(13);
	expect(lastBackup(backups)).toMatchObject({ ok: false, at: AT });
});

test('a year of backups of a damaged record fills no disk, and the whole ones outlive it', () => {
	const dayMs = 86_400_000;
	const nameAt = (ms: number) => backupName(new Date(ms).toISOString(), 'db');
	let names: string[] = [];
	let whole: string[] = [];
	for (let day = 0; day < 460; day++) {
		const ms = Date.parse('2026-01-01T01:00:00Z') + day * dayMs;
		const isDamaged = day >= 95;
		names.push(nameAt(ms));
		const drop = backupsToDrop(names, { at: new Date(ms).toISOString(), isDamaged });
		names = names.filter((name) => !drop.includes(name));
		if (day === 94) whole = names;
		expect(names.length).toBeLessThanOrEqual(24);
		expect(names).toContain(nameAt(ms));
	}
	expect(whole.length).toBeGreaterThan(7);
	expect(names).toEqual(expect.arrayContaining(whole));
});

test('a backup named in the future says nothing of the last one’s age, and pushes none out', async () => {
	const { folder, db, file } = await openShop();
	await db.destroy();
	const backups = join(folder, 'backups');
	vi.stubEnv('GLOVEWRIGHT_BACKUPS', backups);
	onTestFinished(() => {
		vi.unstubAllEnvs();
	});
	mkdirSync(backups);
	for (let day = 1; day <= 9; day++) {
		writeFileSync(join(backups, backupName(`2031-0${day}-01T00:00:00Z`, 'db')), '');
	}
	expect(ageOfBackupS(AT)).toBeNull();
	expect(isOverdue(ageOfBackupS(AT))).toBe(true);
	const made = await makeBackup({ file }, backups, AT);
	expect(existsSync(made.file)).toBe(true);
	expect(listBackups(backups)).toHaveLength(10);
	expect(ageOfBackupS('2026-03-02T15:00:00Z')).toBe(3600);
});

test('what a backup that was killed left behind goes a day later', async () => {
	const { folder, db, file } = await openShop();
	await db.destroy();
	const backups = join(folder, 'backups');
	mkdirSync(backups);
	const [old, young] = ['2026-03-01T13:00:00Z', '2026-03-02T13:00:00Z'].map(
		(at) => `${backupName(at, 'db')}.partial`
	);
	for (const name of [old, young, 'mine.partial']) writeFileSync(join(backups, name ?? ''), 'half');
	await makeBackup({ file }, backups, AT);
	expect(readdirSync(backups).sort()).toEqual(
		[backupName(AT, 'db'), young, 'last.json', 'mine.partial'].sort()
	);
});

test('kept are the last of seven days and of five weeks; other files are never touched', () => {
	const names: string[] = [];
	for (let hour = 0; hour < 24 * 90; hour += 6) {
		const at = new Date(Date.parse('2026-01-01T00:00:00Z') + hour * 3_600_000).toISOString();
		names.push(backupName(at, 'db'));
	}
	const others = ['notes.txt', 'glovewright.db', 'before-restore.db'];
	const drop = backupsToDrop([...names, ...others], { at: '2026-04-01T00:00:00Z' });
	const kept = names.filter((name) => !drop.includes(name)).map((name) => backupTime(name));
	// 90 days from 1 January end on 31 March 2026, a Tuesday: seven days, then the Sundays of the weeks before.
	expect(kept).toEqual([
		'2026-03-08T18:00:00Z',
		'2026-03-15T18:00:00Z',
		'2026-03-22T18:00:00Z',
		'2026-03-25T18:00:00Z',
		'2026-03-26T18:00:00Z',
		'2026-03-27T18:00:00Z',
		'2026-03-28T18:00:00Z',
		'2026-03-29T18:00:00Z',
		'2026-03-30T18:00:00Z',
		'2026-03-31T18:00:00Z'
	]);
	expect(drop).not.toContain('notes.txt');
	expect(backupTime('glovewright-20260331T180000Z.db.partial')).toBeNull();
});

test('without room nothing is written, and the sentence says how much is needed', async () => {
	const { folder, db, file } = await openShop();
	await db.destroy();
	const ready = await import('../../src/lib/server/ready');
	vi.spyOn(ready, 'freeBytes').mockReturnValue(1000);
	await expect(makeBackup({ file }, join(folder, 'backups'), AT)).rejects.toThrow(
		/no room for a backup.*MB are needed/
	);
	vi.restoreAllMocks();
	expect(listBackups(join(folder, 'backups'))).toEqual([]);
});
