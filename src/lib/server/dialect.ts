import { PostgresAdapter, sql, type Kysely } from 'kysely';
import type { Db } from './database';

/** Whether this database, or transaction, is in PostgreSQL; else it is in SQLite. */
export function isPostgres(db: Pick<Kysely<unknown>, 'getExecutor'>): boolean {
	return db.getExecutor().adapter instanceof PostgresAdapter;
}

/**
 * Whether a write failed because its key or place was taken. Sources: PostgreSQL, Appendix A, 23505;
 * SQLite, Result and Error Codes, 1555 and 2067.
 */
export function isTaken(error: unknown): boolean {
	const TAKEN = ['23505', 'SQLITE_CONSTRAINT_PRIMARYKEY', 'SQLITE_CONSTRAINT_UNIQUE'];
	return error instanceof Error && 'code' in error && TAKEN.includes(String(error.code));
}

/**
 * Runs a transaction that reads, judges and writes as if it were alone. SQLite has one writer at a time;
 * on PostgreSQL those who give the same `matter` wait for each other, in whatever server they run, and
 * each of them then sees what the last one wrote. After `patienceS` the store is said to be busy.
 */
export async function exclusively<T>(
	db: Db,
	matter: string,
	work: (trx: Db) => Promise<T>,
	{ patienceS = 5 } = {}
): Promise<T> {
	return db.transaction().execute(async (trx) => {
		if (isPostgres(trx)) {
			await sql`select set_config('lock_timeout', ${`${patienceS}s`}, true)`.execute(trx);
			await sql`select pg_advisory_xact_lock(hashtextextended(${matter}, 0))`.execute(trx);
		}
		return work(trx);
	});
}
