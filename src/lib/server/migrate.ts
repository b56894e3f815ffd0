import { sql } from 'kysely';
import type { Db } from './database';
import { exclusively, isPostgres } from './dialect';
import { firstSchema } from './migrations/001-first-schema';
import { whosePin } from './migrations/002-whose-pin';
import { meshFiles } from './migrations/003-mesh-files';
import { ownerPassword } from './migrations/004-owner-password';
import { training } from './migrations/005-training';
import { jobsInOrder } from './migrations/006-jobs-in-order';
import { personLocale } from './migrations/007-person-locale';
import { schemaWords } from './migrations/schema-words';
import { StartError } from './start-error';

/** In order, without gaps. */
const MIGRATIONS = [
	firstSchema,
	whosePin,
	meshFiles,
	ownerPassword,
	training,
	jobsInOrder,
	personLocale
];
const NEWEST = MIGRATIONS.at(-1)?.version ?? 0;
/** Another server's step is waited for, however much there is to change. */
const LONGEST_STEP_S = 600;

/**
 * Brings the schema up to date, all steps in one transaction: all of them or none. Safe to call at every
 * start; of several servers that start at once, one does it and the others wait.
 *
 * @throws StartError when the database was written by a newer version
 */
export async function migrate(db: Db, at: string): Promise<void> {
	if ((await versionOf(db)) === NEWEST) return;
	await exclusively(db, 'schema', (trx) => stepOn(trx, at), { patienceS: LONGEST_STEP_S });
}

async function stepOn(trx: Db, at: string): Promise<void> {
	// Asked again under the lock: another server may have started at the same moment.
	const found = await versionOf(trx);
	if (found > NEWEST) {
		throw new StartError(
			`The data was written by a newer Glovewright (schema ${found}; this one knows up to ${NEWEST}). ` +
				'Start the newer version, or point GLOVEWRIGHT_DATA or DATABASE_URL at other data. Nothing was changed.'
		);
	}
	await versionTable(trx);
	for (const { version, name, up } of MIGRATIONS.filter((m) => m.version > found)) {
		await up(trx);
		await trx.insertInto('schema_version').values({ version, name, applied_at: at }).execute();
	}
}

async function versionTable(trx: Db): Promise<void> {
	const { text } = schemaWords(trx);
	await trx.schema
		.createTable('schema_version')
		.ifNotExists()
		.addColumn('version', 'integer', (c) => c.primaryKey())
		.addColumn('name', text, (c) => c.notNull())
		.addColumn('applied_at', text, (c) => c.notNull())
		.execute();
}

/** The newest step that was taken here; 0 in an empty database. */
async function versionOf(db: Db): Promise<number> {
	const found = isPostgres(db)
		? sql<{ n: number }>`select count(*) as n from pg_tables
				where schemaname = current_schema() and tablename = 'schema_version'`
		: sql<{ n: number }>`select count(*) as n from sqlite_master where name = 'schema_version'`;
	if ((await found.execute(db)).rows[0]?.n !== 1) return 0;
	const row = await db
		.selectFrom('schema_version')
		.select((e) => e.fn.max('version').as('version'))
		.executeTakeFirst();
	return row?.version ?? 0;
}
