import { CompiledQuery, Kysely, PostgresDialect, PostgresQueryCompiler } from 'kysely';
import pg from 'pg';
import type { Database, Db } from './database';

const CONNECTIONS = 10;
const CONNECT_MS = 5000;

/** Set anew on each connection, so that no server's own settings weaken what an answer promises. */
const SETTINGS = [
	// What was answered is on the disk.
	'set synchronous_commit = on',
	"set default_transaction_isolation = 'read committed'",
	// As long as SQLite waits for its writer.
	"set lock_timeout = '5s'",
	"set statement_timeout = '60s'",
	// A server that vanished in the middle of a transaction lets go of what it held.
	"set idle_in_transaction_session_timeout = '60s'"
];

/** Texts of PostgreSQL hold no U+0000; the sign for "no such character" stands in its place. */
class NulFreeCompiler extends PostgresQueryCompiler {
	protected override addParameter(parameter: unknown): void {
		const isText = typeof parameter === 'string';
		super.addParameter(isText ? parameter.replaceAll('\u0000', '\ufffd') : parameter);
	}
}

class ShopDialect extends PostgresDialect {
	override createQueryCompiler(): PostgresQueryCompiler {
		return new NulFreeCompiler();
	}
}

const INT8 = 20;
/** Counts come as 64-bit integers, which the driver gives as text unless told otherwise. */
const types: pg.CustomTypesConfig = {
	getTypeParser: (oid, format) =>
		oid === INT8 && format !== 'binary' ? Number : pg.types.getTypeParser(oid, format)
};

/** Options for one connection to the database at `url`. */
export function connectionOptions(url: string): pg.ClientConfig {
	return {
		connectionString: url,
		connectionTimeoutMillis: CONNECT_MS,
		keepAlive: true,
		application_name: 'glovewright',
		types
	};
}

/** Opens the PostgreSQL database at `url`; connections are made when they are first needed. */
export function openPostgres(url: string): Db {
	const pool = new pg.Pool({ ...connectionOptions(url), max: CONNECTIONS });
	// A connection that breaks while nobody uses it is replaced; unheard, it would end the server.
	pool.on('error', (error) => console.error('idle connection lost:', error.message));
	return new Kysely<Database>({
		dialect: new ShopDialect({
			pool,
			onCreateConnection: async (connection) => {
				await connection.executeQuery(CompiledQuery.raw(SETTINGS.join('; ')));
			}
		})
	});
}
