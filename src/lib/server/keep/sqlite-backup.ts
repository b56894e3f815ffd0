import { closeSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import { basename } from 'node:path';
import Sqlite from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import type { Database } from '../database';
import { verifyStore, type StoreCheck } from './verify-store';

/** Pages copied before others have a turn. */
const PAGES = 256;

/**
 * Copies a SQLite store that may be in use into one file: as it was at one instant, without holding up
 * who writes. The file appears under its name only after it was opened, checked and verified whole.
 *
 * @returns what is in the copy. `faults` are those of records damaged before: a copy of them is better than none
 * @throws Error when the copied file itself is not whole; then there is no file
 */
export async function backupSqlite(from: string, to: string): Promise<StoreCheck> {
	const partial = `${to}.partial`;
	rmSync(partial, { force: true });
	try {
		await copy(from, partial);
		const check = await checkSqlite(partial);
		flush(partial);
		renameSync(partial, to);
		return check;
	} catch (error) {
		rmSync(partial, { force: true });
		throw error;
	}
}

async function copy(from: string, to: string): Promise<void> {
	const source = new Sqlite(from, { readonly: true, fileMustExist: true });
	try {
		// Held open, this reading fixes the instant; without it every write would start the copy anew.
		source.exec('begin');
		source.prepare('select count(*) from sqlite_master').get();
		await source.backup(to, { progress: () => PAGES });
		source.exec('commit');
	} finally {
		source.close();
	}
	// One file by itself: no log beside it that could be left behind.
	const target = new Sqlite(to);
	target.pragma('journal_mode = DELETE');
	target.close();
}

/**
 * What is in a SQLite file: first its own structure is checked, then everything that has a hash.
 *
 * @throws Error when its structure is broken, or it is no database
 */
export async function checkSqlite(file: string): Promise<StoreCheck> {
	const broken = brokenStructure(file);
	if (broken) throw new Error(`${basename(file)} is not whole: ${broken}.`);
	const sqlite = new Sqlite(file, { readonly: true, fileMustExist: true });
	const db = new Kysely<Database>({ dialect: new SqliteDialect({ database: sqlite }) });
	try {
		return await verifyStore(db);
	} finally {
		await db.destroy();
	}
}

function brokenStructure(file: string): string | null {
	const sqlite = new Sqlite(file, { readonly: true, fileMustExist: true });
	try {
		const said = sqlite.pragma('integrity_check(1)', { simple: true });
		if (said !== 'ok') return String(said);
		const orphans = sqlite.pragma('foreign_key_check') as unknown[];
		return orphans.length === 0 ? null : `${orphans.length} rows belong to nothing`;
	} finally {
		sqlite.close();
	}
}

function flush(file: string): void {
	const handle = openSync(file, 'r+');
	fsyncSync(handle);
	closeSync(handle);
}
