import type Sqlite from 'better-sqlite3';
import type { SqliteDatabase, SqliteStatement } from 'kysely';

/** Different texts the app says to its store; lists of any length make some more. */
const MOST_KEPT = 300;
/** What changes no table, so that a statement prepared before still holds after it. */
const KEEPS_SCHEMA = /^(select|insert|update|delete|begin|commit|rollback|savepoint|release)\b/i;

/**
 * A SQLite database that prepares each text once. Preparing takes longer than most statements do. Whatever
 * may change a table lets go of all that was kept; the statement unused for longest goes when there are too many.
 */
export function withKeptStatements(sqlite: Sqlite.Database): SqliteDatabase {
	const kept = new Map<string, SqliteStatement>();
	return {
		close: () => sqlite.close(),
		prepare: (sql) => {
			if (!KEEPS_SCHEMA.test(sql)) {
				kept.clear();
				return sqlite.prepare(sql) as SqliteStatement;
			}
			const statement = kept.get(sql) ?? (sqlite.prepare(sql) as SqliteStatement);
			kept.delete(sql);
			kept.set(sql, statement);
			if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value ?? sql);
			return statement;
		}
	};
}
