import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { openDatabase } from '../database';
import { migrate } from '../migrate';
import { backupName } from './backup-names';
import { checkSqlite } from './sqlite-backup';
import { verifyStore, type StoreCheck } from './verify-store';

export interface RestoreOptions {
	/** The backup. */
	from: string;
	/** The data folder to put it into. */
	folder: string;
	/** Puts what is there aside, under a name of its own. */
	isReplacing: boolean;
	at: string;
}

export type Restored =
	| { status: 'restored'; check: StoreCheck; setAside: string | null }
	| { status: 'refused'; reason: string };

const STORE = 'glovewright.db';

/**
 * Puts a backup in the place of a store. It is verified, brought up to date and verified again beside what
 * is there, which is touched last and never thrown away. Everybody signs in anew.
 */
export async function restoreSqlite(options: RestoreOptions): Promise<Restored> {
	const { from, folder, isReplacing, at } = options;
	const target = join(folder, STORE);
	const hasStore = existsSync(target);
	if (hasStore && !isReplacing) {
		return {
			status: 'refused',
			reason: `There is a store in ${folder} already. Add --replace to put it aside, or set GLOVEWRIGHT_DATA to an empty folder.`
		};
	}
	const fault = await faultOf(from);
	if (fault) return { status: 'refused', reason: `${fault} Nothing was changed.` };
	if (hasStore && !isAlone(target)) {
		return { status: 'refused', reason: 'A server uses this store. Stop it first.' };
	}
	mkdirSync(folder, { recursive: true });
	const fresh = join(folder, `${STORE}.restoring`);
	try {
		copyFileSync(from, fresh);
		const check = await makeCurrent(fresh, at);
		const setAside = hasStore ? join(folder, `before-restore-${backupName(at, 'db')}`) : null;
		if (setAside) renameSync(target, setAside);
		// Left over by a server that was killed; it belongs to the store that was put aside.
		for (const tail of ['-wal', '-shm']) rmSync(`${target}${tail}`, { force: true });
		renameSync(fresh, target);
		return { status: 'restored', check, setAside };
	} finally {
		for (const tail of ['', '-wal', '-shm']) rmSync(`${fresh}${tail}`, { force: true });
	}
}

async function faultOf(file: string): Promise<string | null> {
	if (!existsSync(file)) return `There is no ${file}.`;
	try {
		const { faults } = await checkSqlite(file);
		return faults[0] ?? null;
	} catch (error) {
		return `${file}: ${error instanceof Error ? error.message : String(error)}.`;
	}
}

/** Whether nobody else has the file open: only then can its write-ahead log be folded into it and ended. */
function isAlone(file: string): boolean {
	const sqlite = new Sqlite(file, { timeout: 500 });
	try {
		return sqlite.pragma('journal_mode = DELETE', { simple: true }) === 'delete';
	} catch {
		return false;
	} finally {
		sqlite.close();
	}
}

async function makeCurrent(file: string, at: string): Promise<StoreCheck> {
	const db = openDatabase(file);
	try {
		await migrate(db, at);
		// A session that was ended since the backup must not come back to life.
		await db.deleteFrom('session').execute();
		const check = await verifyStore(db);
		if (check.faults[0]) throw new Error(check.faults[0]);
		return check;
	} finally {
		// Closing the last connection folds the write-ahead log into the file.
		await db.destroy();
	}
}
