import { mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { openDatabase, type Db } from '../database';
import { freeBytes } from '../ready';
import { openConfiguredStore } from '../store';
import { dropOldBackups, noteBackup } from './backup-folder';
import { backupName } from './backup-names';
import { exportShop } from './export-shop';
import type { Manifest } from './manifest';
import { backupSqlite } from './sqlite-backup';

/** Where the store is: a file, or else the PostgreSQL database at DATABASE_URL. */
export interface Source {
	/** Null for PostgreSQL. */
	file: string | null;
}

export interface MadeBackup {
	file: string;
	bytes: number;
	/** Records that were damaged before. A copy of a SQLite file holds them as they are; an export does not hold them. */
	faults: string[];
	said: string;
}

/**
 * Writes a verified backup into `folder` and throws old ones away. While a record is damaged those from
 * before are worth more, and stay.
 *
 * @throws Error in a sentence when there is no room, or the copy is not whole
 */
export async function makeBackup(source: Source, folder: string, at: string): Promise<MadeBackup> {
	mkdirSync(folder, { recursive: true });
	const file = join(folder, backupName(at, source.file ? 'db' : 'zip'));
	const faults = source.file ? await copyFile(source.file, file) : await copyPostgres(file, at);
	const { size: bytes } = statSync(file);
	const dropped = dropOldBackups(folder, { at, isDamaged: faults.length > 0 });
	const said =
		faults.length > 0
			? `${faults.length} damaged: ${faults[0]} The oldest backups are kept.`
			: `Verified whole. ${dropped} older thrown away.`;
	noteBackup(folder, { at, ok: faults.length === 0, said });
	return { file, bytes, faults, said };
}

async function copyFile(from: string, to: string): Promise<string[]> {
	const { size } = statSync(from);
	const free = freeBytes(join(to, '..'));
	if (free < size * 1.2) {
		throw new Error(
			`There is no room for a backup: ${Math.round(free / 1e6)} MB are free, ${Math.round((size * 1.2) / 1e6)} MB are needed.`
		);
	}
	return (await backupSqlite(from, to)).faults;
}

async function copyPostgres(to: string, at: string): Promise<string[]> {
	return (await exportFrom({ file: null }, { to, at, withPins: true })).damaged;
}

/** Exports the shop as it is at one instant, while work goes on. */
export async function exportFrom(
	source: Source,
	options: { to: string; at: string; withPins: boolean }
): Promise<Manifest> {
	if (!source.file) return exportPostgres(options);
	const folder = mkdtempSync(`${options.to}-`);
	try {
		const copy = join(folder, 'copy.db');
		await backupSqlite(source.file, copy);
		const db = openDatabase(copy);
		try {
			return await exportShop(db, options);
		} finally {
			await db.destroy();
		}
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

async function exportPostgres(options: {
	to: string;
	at: string;
	withPins: boolean;
}): Promise<Manifest> {
	const db: Db = await openConfiguredStore();
	try {
		return await db
			.transaction()
			.setIsolationLevel('repeatable read')
			.execute((trx) => exportShop(trx, options));
	} finally {
		await db.destroy();
	}
}
