import {
	existsSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	rmSync,
	statSync,
	writeFileSync
} from 'node:fs';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import { dataFolder } from '../store';
import { backupsToDrop, backupTime, leftovers } from './backup-names';

/** What became of the last try, for the shop's page. */
const lastSchema = z.strictObject({
	at: z.string(),
	ok: z.boolean(),
	/** Sentence of what was written, or of why not. */
	said: z.string()
});
export type LastBackup = z.infer<typeof lastSchema>;

export interface KeptBackup {
	name: string;
	at: string;
	bytes: number;
}

/** Where backups are kept: GLOVEWRIGHT_BACKUPS, or "backups" in the data folder; "off" makes none by itself. */
export function backupFolder(): string {
	const named = process.env.GLOVEWRIGHT_BACKUPS;
	return resolve(named && named !== 'off' ? named : join(dataFolder(), 'backups'));
}

/** The backups in a folder, newest first; none when there is no folder. */
export function listBackups(folder: string): KeptBackup[] {
	if (!existsSync(folder)) return [];
	return readdirSync(folder)
		.flatMap((name) => {
			const at = backupTime(name);
			return at ? [{ name, at, bytes: statSync(join(folder, name)).size }] : [];
		})
		.sort((a, b) => b.at.localeCompare(a.at));
}

/** Throws away what `backupsToDrop` names, and what backups that were killed left behind. @returns how many backups */
export function dropOldBackups(folder: string, now: { at: string; isDamaged: boolean }): number {
	const names = readdirSync(folder);
	const drop = backupsToDrop(names, now);
	for (const name of [...drop, ...leftovers(names, now.at)]) rmSync(join(folder, name));
	return drop.length;
}

/** What the last try came to; null before the first. */
export function lastBackup(folder: string): LastBackup | null {
	try {
		return lastSchema.parse(JSON.parse(readFileSync(join(folder, 'last.json'), 'utf8')));
	} catch {
		return null;
	}
}

export function noteBackup(folder: string, last: LastBackup): void {
	mkdirSync(folder, { recursive: true });
	writeFileSync(join(folder, 'last.json'), `${JSON.stringify(last)}\n`);
}
