import { accessSync, constants, mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { now } from './clock';
import { openDatabase, type Db } from './database';
import { migrate } from './migrate';
import { openPostgresStore } from './postgres-start';
import { StartError } from './start-error';

/** The folder everything is kept in: GLOVEWRIGHT_DATA, or "data" where the server was started. */
export function dataFolder(): string {
	return resolve(process.env.GLOVEWRIGHT_DATA || 'data');
}

/**
 * Opens the store this server is told to use: the PostgreSQL database at DATABASE_URL, which several
 * servers may share, or else the file in the data folder.
 *
 * @throws StartError with one sentence when it cannot be used
 */
export async function openConfiguredStore(): Promise<Db> {
	const url = process.env.DATABASE_URL;
	return url ? openPostgresStore(url) : openStore(dataFolder());
}

/**
 * Opens the shop's store in `folder`, making the folder and the tables when they are not there.
 *
 * @throws StartError with one sentence when the folder or the database cannot be used
 */
export async function openStore(folder: string): Promise<Db> {
	let db: Db;
	try {
		mkdirSync(folder, { recursive: true });
		accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
		db = openDatabase(join(folder, 'glovewright.db'));
	} catch (error) {
		throw new StartError(
			`The data folder ${folder} cannot be written (${reasonOf(error)}). ` +
				'Give this user the right to write there, or point GLOVEWRIGHT_DATA at another folder.',
			{ cause: error }
		);
	}
	try {
		await migrate(db, now());
	} catch (error) {
		await db.destroy();
		if (error instanceof StartError) throw error;
		throw new StartError(
			`The database in ${folder} cannot be used (${reasonOf(error)}). Nothing was changed.`,
			{ cause: error }
		);
	}
	return db;
}

function reasonOf(error: unknown): string {
	return error instanceof Error ? error.message.replace(/\.$/, '') : String(error);
}
