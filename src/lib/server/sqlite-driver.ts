import { CompiledQuery, SqliteDialect, SqliteDriver, type DatabaseConnection } from 'kysely';
import type Sqlite from 'better-sqlite3';
import { withKeptStatements } from './sqlite-statements';

/** Takes the write lock when a transaction begins, so that what it read still holds when it writes. */
class ImmediateDriver extends SqliteDriver {
	readonly #sqlite: Sqlite.Database;

	constructor(sqlite: Sqlite.Database) {
		super({ database: withKeptStatements(sqlite) });
		this.#sqlite = sqlite;
	}

	override async beginTransaction(connection: DatabaseConnection): Promise<void> {
		await connection.executeQuery(CompiledQuery.raw('begin immediate'));
	}

	override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
		// A full disk makes SQLite roll back by itself; a second rollback would hide the first error.
		if (this.#sqlite.inTransaction) await super.rollbackTransaction(connection);
	}
}

export class ImmediateSqliteDialect extends SqliteDialect {
	readonly #sqlite: Sqlite.Database;

	constructor(sqlite: Sqlite.Database) {
		super({ database: sqlite });
		this.#sqlite = sqlite;
	}

	override createDriver(): ImmediateDriver {
		return new ImmediateDriver(this.#sqlite);
	}
}
