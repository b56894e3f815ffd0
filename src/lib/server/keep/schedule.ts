import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { now } from '../clock';
import type { Db } from '../database';
import { log } from '../log';
import { getShop } from '../shop.repository';
import { backupFolder, listBackups } from './backup-folder';

const DAY_S = 24 * 3600;
/** When the owner is warned: a day was missed. */
const OLD_S = 2 * DAY_S;
/** Not at once: a server that is started and stopped again has better things to do. */
const FIRST_LOOK_MS = 60_000;
const LOOK_MS = 15 * 60_000;

const start = promisify(execFile);
let running: Promise<boolean> | null = null;

/** Whether this server can make backups by itself: it was started by a script that brought the commands along. */
export function canBackUp(): boolean {
	return !!process.env.GLOVEWRIGHT_TOOL && process.env.GLOVEWRIGHT_BACKUPS !== 'off';
}

/** Seconds since the newest backup; null when there is none, or only such as are named later than now. */
export function ageOfBackupS(at = now()): number | null {
	const ages = listBackups(backupFolder()).map((kept) => Date.parse(at) - Date.parse(kept.at));
	const newestMs = ages.find((ageMs) => ageMs >= 0);
	return newestMs === undefined ? null : newestMs / 1000;
}

/** Whether the owner must be told: there is no backup, or a day was missed. */
export function isOverdue(ageS: number | null): boolean {
	return ageS === null || ageS > OLD_S;
}

/**
 * Makes a backup now, in a process of its own so that no bench waits. Two at once are one.
 *
 * @returns whether it was made; why not stands in the folder and in the log
 */
export function backUpNow(): Promise<boolean> {
	running ??= runTool(['backup'])
		.then(() => true)
		.catch((error: unknown) => {
			log.error({ err: error }, 'the backup was not made, or is of damaged records');
			return false;
		})
		.finally(() => (running = null));
	return running;
}

/** Runs one of the commands beside the server. @throws when it ends with anything but 0 */
export async function runTool(args: readonly string[]): Promise<string> {
	const script = process.env.GLOVEWRIGHT_TOOL;
	if (!script) throw new Error('This server was started without its commands.');
	const { stdout } = await start(process.execPath, [script, ...args]);
	return stdout;
}

/** Makes a backup whenever the newest is a day old, until the returned function is called. */
export function scheduleBackups(db: Db): () => void {
	if (!canBackUp()) return () => {};
	const look = () => {
		lookOnce(db).catch((error: unknown) => log.error({ err: error }, 'looking for a backup'));
	};
	const first = setTimeout(look, FIRST_LOOK_MS);
	const timer = setInterval(look, LOOK_MS);
	return () => {
		clearTimeout(first);
		clearInterval(timer);
	};
}

async function lookOnce(db: Db): Promise<void> {
	const ageS = ageOfBackupS();
	if ((ageS !== null && ageS < DAY_S) || !(await getShop(db))) return;
	if (await backUpNow()) log.info('a backup was made');
}
