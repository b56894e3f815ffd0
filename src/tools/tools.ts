import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { now } from '$lib/server/clock';
import { backupFolder, noteBackup } from '$lib/server/keep/backup-folder';
import { importShop } from '$lib/server/keep/import-shop';
import { exportFrom, makeBackup, type Source } from '$lib/server/keep/make-backup';
import { restoreSqlite } from '$lib/server/keep/restore';
import type { StoreCheck } from '$lib/server/keep/verify-store';
import { forgetPassword } from '$lib/server/password';
import { dataFolder, openConfiguredStore } from '$lib/server/store';

const USAGE = `Usage:
  npm run backup                          one verified file into the backup folder
  npm run restore -- FILE [--replace]     puts a backup in place; --replace sets aside what is there
  npm run export -- FILE.zip [--with-pins] the whole shop in open formats
  npm run import -- FILE.zip              reads an export into an empty store
  npm run forget-password -- "NAME"       takes a forgotten password of the owner's pages away`;

/** What a command says, and its exit code: 0 done, 1 not done, 2 done but something is damaged. */
export interface Told {
	code: 0 | 1 | 2;
	lines: string[];
}

/** Runs one command of whoever looks after the server. */
export async function runTool(args: readonly string[]): Promise<Told> {
	const flags = args.filter((arg) => arg.startsWith('--'));
	const [command, file, ...rest] = args.filter((arg) => !arg.startsWith('--'));
	const accepted = { restore: ['--replace'], export: ['--with-pins'] }[command ?? ''] ?? [];
	const strange = flags.find((flag) => !accepted.includes(flag)) ?? rest[0];
	if (strange !== undefined) return { code: 1, lines: [`${strange} is not known here.`, USAGE] };
	if (command === 'backup' && !file) return backup();
	if (command === 'restore' && file) return restore(file, flags.length > 0);
	if (command === 'export' && file) return exportTo(file, flags.length > 0);
	if (command === 'import' && file) return importFrom(file);
	if (command === 'forget-password' && file) return forget(file);
	return { code: 1, lines: [USAGE] };
}

async function forget(name: string): Promise<Told> {
	const db = await openConfiguredStore();
	try {
		const count = await forgetPassword(db, name);
		return count > 0
			? { code: 0, lines: [`${name} chooses a new password with the PIN, at /unlock.`] }
			: { code: 1, lines: [`Nobody here is called ${name}.`] };
	} finally {
		await db.destroy();
	}
}

function source(): Source {
	if (process.env.DATABASE_URL) return { file: null };
	const file = join(dataFolder(), 'glovewright.db');
	if (!existsSync(file)) throw new Error(`There is no store in ${dataFolder()}.`);
	return { file };
}

async function backup(): Promise<Told> {
	const at = now();
	try {
		const { file, bytes, faults, said } = await makeBackup(source(), backupFolder(), at);
		return { code: faults.length > 0 ? 2 : 0, lines: [`${file}, ${bytes} bytes. ${said}`] };
	} catch (error) {
		const said = error instanceof Error ? error.message : String(error);
		noteBackup(backupFolder(), { at, ok: false, said });
		throw error;
	}
}

async function restore(from: string, isReplacing: boolean): Promise<Told> {
	if (from.endsWith('.zip')) return importFrom(from);
	if (process.env.DATABASE_URL) {
		return {
			code: 1,
			lines: ['DATABASE_URL is set: into PostgreSQL an export (.zip) is read, not a SQLite file.']
		};
	}
	const options = { from, folder: dataFolder(), isReplacing, at: now() };
	const restored = await restoreSqlite(options);
	if (restored.status === 'refused') return { code: 1, lines: [restored.reason] };
	const { check, setAside } = restored;
	return {
		code: 0,
		lines: [
			`Restored into ${dataFolder()}: ${countsOf(check)}, verified whole.`,
			...(setAside ? [`What was there is kept as ${setAside}.`] : []),
			'Everybody signs in anew. Acts made after the backup are not in it: look for them on the devices.'
		]
	};
}

async function exportTo(to: string, withPins: boolean): Promise<Told> {
	if (existsSync(to)) return { code: 1, lines: [`There is a ${to} already. Nothing was written.`] };
	const { jobs, damaged } = await exportFrom(source(), { to, at: now(), withPins });
	return {
		code: damaged.length > 0 ? 2 : 0,
		lines: [
			`${to}: ${jobs.length} molds${withPins ? ', with the hashes of PINs: keep it like a key' : ''}.`,
			...damaged.map((what) => `NOT IN IT, damaged: ${what}`)
		]
	};
}

async function importFrom(file: string): Promise<Told> {
	const db = await openConfiguredStore();
	try {
		const imported = await importShop(db, file);
		if (imported.status === 'not empty') {
			return {
				code: 1,
				lines: ['There is a shop in this store already; an export is read into an empty one.']
			};
		}
		if (imported.status === 'unfit') {
			return { code: 1, lines: [`${file} is not read: ${imported.reason}. Nothing was changed.`] };
		}
		const { check, firstPins } = imported;
		return {
			code: 0,
			lines: [
				`Read into this store: ${countsOf(check)}, verified whole.`,
				...(firstPins.length > 0
					? ['First PINs, shown only here; each chooses their own when they sign in:']
					: []),
				...firstPins.map(({ name, pin }) => `  ${name}: ${pin}`)
			]
		};
	} finally {
		await db.destroy();
	}
}

function countsOf({ jobs, events, photos, meshes }: StoreCheck): string {
	return `${jobs} molds, ${events} entries, ${photos} photos, ${meshes} mesh files`;
}
