import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, onTestFinished, test, vi } from 'vitest';
import { openDatabase, type Db } from '../../src/lib/server/database';
import { isPostgres } from '../../src/lib/server/dialect';
import { getJob } from '../../src/lib/server/jobs.repository';
import { csvLine } from '../../src/lib/server/keep/csv';
import { exportShop } from '../../src/lib/server/keep/export-shop';
import { importShop } from '../../src/lib/server/keep/import-shop';
import { LEFT_BEHIND, OWN_FORM, PLAIN_TABLES } from '../../src/lib/server/keep/shop-tables';
import { verifyStore } from '../../src/lib/server/keep/verify-store';
import { ShopExport } from '../../src/lib/server/keep/read-export';
import { ZipWriter } from '../../src/lib/server/keep/zip-writer';
import * as meshFiles from '../../src/lib/server/mesh-files';
import { migrate } from '../../src/lib/server/migrate';
import { listPeople } from '../../src/lib/server/people.repository';
import { checkPin } from '../../src/lib/server/pin';
import { listSheets } from '../../src/lib/server/sheets.repository';
import { getShop } from '../../src/lib/server/shop.repository';
import { answersOf, recordsByPerson } from '../../src/lib/server/training/training.repository';
import { fillShop } from '../fixtures/filled-shop';
import { AT, tempFolder } from '../fixtures/server-store';
import { tamper, testStore } from '../fixtures/test-store';

async function exported({ withPins = true } = {}) {
	const db = await testStore();
	const filled = await fillShop(db);
	const to = join(tempFolder(), 'shop.zip');
	const manifest = await exportShop(db, { to, at: AT, withPins });
	return { db, to, manifest, ...filled };
}

/** Everything that can be asked of a shop, for comparing two stores. */
async function all(db: Db) {
	const { heads, faults, photos, meshes } = await verifyStore(db);
	return {
		heads,
		faults,
		photos,
		meshes,
		shop: await getShop(db),
		people: await listPeople(db),
		training: await answersOf(db, { personId: (await listPeople(db))[1]?.id ?? '' }),
		records: await recordsByPerson(db),
		sheets: await listSheets(db, { withRetired: true })
	};
}

/** What an export says of itself once every file was checked; null when it is refused. */
function readOrNull(path: string) {
	try {
		const zip = new ShopExport(path);
		zip.close();
		return zip.manifest;
	} catch {
		return null;
	}
}

test('every table of the schema is exported, or belongs to one installation', async () => {
	const db = await testStore();
	const tables = isPostgres(db)
		? sql<{
				name: string;
			}>`select table_name as name from information_schema.tables where table_schema = 'public'`
		: sql<{
				name: string;
			}>`select name from sqlite_master where type = 'table' and name not like 'sqlite_%'`;
	const found = (await tables.execute(db)).rows.map(({ name }) => name).sort();
	expect(found).toEqual([...Object.keys(PLAIN_TABLES), ...OWN_FORM, ...LEFT_BEHIND].sort());
});

test('a shop that is exported and read into an empty store is the same shop', async () => {
	const { db, to, ada, jobId } = await exported();
	const other = await testStore();
	const imported = await importShop(other, to);
	expect(imported).toMatchObject({ status: 'imported', firstPins: [] });
	expect(await all(other)).toEqual(await all(db));
	const [copied, original] = [await getJob(other, jobId), await getJob(db, jobId)];
	expect(copied?.log).toEqual(original?.log);
	expect(copied?.headSeq).toBeGreaterThan(5);
	const tried = { personId: ada.id, pin: '24682468', address: 'bench', at: AT };
	expect(await checkPin(other, tried)).toEqual({ ok: true });
	// A second time there is a shop already.
	expect(await importShop(other, to)).toEqual({ status: 'not empty' });
});

test('a shop moves from a SQLite file to this store and back, head by head', async () => {
	const file = openDatabase(join(tempFolder(), 'shop.db'));
	await migrate(file, AT);
	await fillShop(file);
	const [there, back] = [join(tempFolder(), 'there.zip'), join(tempFolder(), 'back.zip')];
	await exportShop(file, { to: there, at: AT, withPins: true });
	const here = await testStore();
	expect(await importShop(here, there)).toMatchObject({ status: 'imported' });
	await exportShop(here, { to: back, at: AT, withPins: true });
	const again = openDatabase(join(tempFolder(), 'again.db'));
	await migrate(again, AT);
	expect(await importShop(again, back)).toMatchObject({ status: 'imported' });
	expect(await all(again)).toEqual(await all(file));
	// What lies in the two zips is the same, byte by byte.
	const files = (path: string) => new ShopExport(path).manifest.files;
	expect(files(back)).toEqual(files(there));
	await file.destroy();
	await again.destroy();
});

test('without PINs none leaves the shop; those who sign get a first one that is not their own', async () => {
	const { to, ada } = await exported({ withPins: false });
	const zip = new ShopExport(to);
	for (const name of Object.keys(zip.manifest.files)) {
		expect(zip.read(name).includes('scrypt$'), name).toBe(false);
	}
	const other = await testStore();
	const imported = await importShop(other, to);
	if (imported.status !== 'imported') throw new Error(imported.status);
	expect(imported.firstPins.map(({ name }) => name)).toEqual(['Ada Quill']);
	const pin = imported.firstPins[0]?.pin ?? '';
	expect(pin).toMatch(/^\d{8}$/);
	const tried = { personId: ada.id, address: 'bench', at: AT };
	expect(await checkPin(other, { ...tried, pin })).toEqual({ ok: true });
	expect(await checkPin(other, { ...tried, pin: '24682468' })).toMatchObject({ ok: false });
	const people = await listPeople(other);
	expect(people.every(({ pinGivenBy }) => pinGivenBy !== null)).toBe(true);
});

test('an export with a byte changed is refused, or is read as the same: nothing else gets in', async () => {
	const { to, manifest } = await exported();
	const whole = readFileSync(to);
	const altered = join(tempFolder(), 'altered.zip');
	let refused = 0;
	for (let i = 0; i < 300; i++) {
		const at = Math.floor(((i + 0.37) / 300) * whole.length);
		const bytes = Buffer.from(whole);
		bytes[at] = (bytes[at] ?? 0) ^ 0x41;
		writeFileSync(altered, bytes);
		const read = readOrNull(altered);
		// Dates and the like in the zip's own frame are read by nobody; all that is read has a hash.
		if (read) expect(read, `a change at ${at}`).toEqual(manifest);
		else refused += 1;
	}
	expect(refused).toBeGreaterThan(250);
	const other = await testStore();
	writeFileSync(altered, whole.subarray(0, whole.length - 1000));
	expect(await importShop(other, altered)).toMatchObject({ status: 'unfit' });
	writeFileSync(altered, 'this is no zip');
	expect(await importShop(other, altered)).toMatchObject({ status: 'unfit' });
	expect(await getShop(other)).toBeNull();
});

test('while an export is written it has not its name; one that fails leaves nothing', async () => {
	onTestFinished(() => {
		vi.restoreAllMocks();
	});
	const db = await testStore();
	await fillShop(db);
	const folder = tempFolder();
	const options = { to: join(folder, 'shop.zip'), at: AT, withPins: true };
	let meanwhile: string[] = [];
	vi.spyOn(meshFiles, 'openMesh').mockImplementationOnce(async () => {
		meanwhile = readdirSync(folder);
		throw new Error('the disk is gone');
	});
	await expect(exportShop(db, options)).rejects.toThrow('the disk is gone');
	expect(meanwhile).toEqual(['shop.zip.partial']);
	expect(readdirSync(folder)).toEqual([]);
	// Written without its directory, as by a disk that forgets: found by reading it again.
	vi.spyOn(ZipWriter.prototype, 'finish').mockImplementationOnce(() => {});
	await expect(exportShop(db, options)).rejects.toThrow(/zip/);
	expect(readdirSync(folder)).toEqual([]);
	// What a process that was killed left behind is in nobody's way.
	writeFileSync(`${options.to}.partial`, 'half');
	await exportShop(db, options);
	expect(readdirSync(folder)).toEqual(['shop.zip']);
	await expect(exportShop(db, options)).rejects.toThrow(/already/);
	expect(readOrNull(options.to)).not.toBeNull();
});

test('a damaged record is named and left out, and hides none of the others', async () => {
	const { db, jobId } = await exported();
	await tamper(db, `update event set recorded_at = '2020-01-01T00:00:00Z' where seq = 2`);
	const to = join(tempFolder(), 'damaged.zip');
	const manifest = await exportShop(db, { to, at: AT, withPins: false });
	expect(manifest.jobs).toEqual([]);
	expect(manifest.damaged).toEqual([
		expect.stringMatching(new RegExp(`${jobId}: event 2 was altered`))
	]);
});

test('a spreadsheet gets names as names: quoted, and never as a formula', async () => {
	expect(csvLine(['a,b', 'say "x"', 'two\nlines', -1, null, '=1+1', '@x'])).toBe(
		`"a,b","say ""x""","two\nlines",-1,,'=1+1,'@x\r\n`
	);
	const { to } = await exported();
	const people = new ShopExport(to).read('csv/people.csv').toString('utf8');
	expect(people).toContain(`"'=Ben ""Marsh"", Jr."`);
});

test('a zip that grows past its format says what to do instead, not the command that failed', async () => {
	const most = { files: 3, bytes: 4000 };
	const open = () => new ZipWriter(join(tempFolder(), 'large.zip'), most);
	const many = open();
	for (const name of ['1', '2', '3']) await many.add(name, ['x'], { packed: false });
	many.finish();
	many.close();
	const tooMany = open();
	for (const name of ['1', '2', '3', '4']) await tooMany.add(name, ['x'], { packed: false });
	expect(() => tooMany.finish()).toThrow(/up to 3 files.*pg_dump for PostgreSQL/);
	tooMany.close();
	const tooLarge = open();
	const add = tooLarge.add('1', [Buffer.alloc(4001)], { packed: false });
	await expect(add).rejects.toThrow(/4000 bytes.*copies the database file/);
	tooLarge.close();
});
