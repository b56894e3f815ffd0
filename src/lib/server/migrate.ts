import type { Db } from './database';
import { firstSchema } from './migrations/001-first-schema';
import { whosePin } from './migrations/002-whose-pin';
import { meshFiles } from './migrations/003-mesh-files';
import { StartError } from './start-error';

/** In order, without gaps. */
const MIGRATIONS = [firstSchema, whosePin, meshFiles];

/**
 * Brings the schema up to date, each step in a transaction of its own. Safe to call at every start.
 *
 * @throws StartError when the database was written by a newer version
 */
export async function migrate(db: Db, at: string): Promise<void> {
	await db.schema
		.createTable('schema_version')
		.ifNotExists()
		.addColumn('version', 'integer', (c) => c.primaryKey())
		.addColumn('name', 'text', (c) => c.notNull())
		.addColumn('applied_at', 'text', (c) => c.notNull())
		.execute();

	const newest = MIGRATIONS.at(-1)?.version ?? 0;
	const found = await versionOf(db);
	if (found > newest) {
		throw new StartError(
			`The data was written by a newer Glovewright (schema ${found}; this one knows up to ${newest}). ` +
				'Start the newer version, or point GLOVEWRIGHT_DATA at another folder. Nothing was changed.'
		);
	}
	for (const { version, name, up } of MIGRATIONS) {
		await db.transaction().execute(async (trx) => {
			// Asked again under the lock: another server may have started at the same moment.
			if ((await versionOf(trx)) >= version) return;
			await up(trx);
			await trx.insertInto('schema_version').values({ version, name, applied_at: at }).execute();
		});
	}
}

async function versionOf(db: Db): Promise<number> {
	const row = await db
		.selectFrom('schema_version')
		.select((e) => e.fn.max('version').as('version'))
		.executeTakeFirst();
	return row?.version ?? 0;
}
