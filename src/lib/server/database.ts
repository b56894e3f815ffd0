import Sqlite from 'better-sqlite3';
import { Kysely } from 'kysely';
import { ImmediateSqliteDialect } from './sqlite-driver';
import type { Database } from './tables';

export type { Database } from './tables';

/** The database, or a transaction in it: what every repository takes first. */
export type Db = Kysely<Database>;

/**
 * Opens a SQLite file, or a database in memory for ":memory:". An answered write is on the disk.
 *
 * @throws the driver's error when the file cannot be opened; `openStore` turns it into a sentence
 */
export function openDatabase(file: string): Db {
	const sqlite = new Sqlite(file);
	sqlite.pragma('journal_mode = WAL');
	sqlite.pragma('synchronous = FULL');
	sqlite.pragma('foreign_keys = ON');
	sqlite.pragma('busy_timeout = 5000');
	// Without it INSERT OR REPLACE would walk past the triggers that keep the log append-only.
	sqlite.pragma('recursive_triggers = ON');
	return new Kysely<Database>({ dialect: new ImmediateSqliteDialect(sqlite) });
}
