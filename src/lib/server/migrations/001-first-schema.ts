import { sql, type Kysely } from 'kysely';
import { isPostgres } from '../dialect';
import type { Migration } from './migration';
import { schemaWords, writtenOnce } from './schema-words';

/** The shop's own tables, which change. */
async function shopTables(db: Kysely<unknown>): Promise<void> {
	const { text, strict } = schemaWords(db);
	await db.schema
		.createTable('shop')
		.addColumn('id', 'integer', (c) => c.primaryKey().check(sql`id = 1`))
		.addColumn('body', text, (c) => c.notNull())
		.addColumn('updated_at', text, (c) => c.notNull())
		.$call(strict)
		.execute();
	await db.schema
		.createTable('person')
		.addColumn('id', text, (c) => c.primaryKey().notNull())
		.addColumn('name', text, (c) => c.notNull())
		.addColumn('role', text, (c) => c.notNull())
		.addColumn('pin_hash', text, (c) => c.notNull())
		.addColumn('retired', 'integer', (c) => c.notNull().check(sql`retired in (0, 1)`))
		.addColumn('added_at', text, (c) => c.notNull())
		.$call(strict)
		.execute();
	await db.schema
		.createTable('session')
		.addColumn('token_hash', text, (c) => c.primaryKey().notNull())
		.addColumn('person_id', text, (c) => c.notNull().references('person.id'))
		.addColumn('started_at', text, (c) => c.notNull())
		.addColumn('seen_at', text, (c) => c.notNull())
		.$call(strict)
		.execute();
	await db.schema
		.createTable('pin_attempt')
		.addColumn('n', 'integer', (c) =>
			// SQLite counts such a key by itself.
			isPostgres(db) ? c.generatedByDefaultAsIdentity().primaryKey() : c.primaryKey()
		)
		.addColumn('person_id', text, (c) => c.notNull())
		.addColumn('address', text, (c) => c.notNull())
		.addColumn('at', text, (c) => c.notNull())
		.addColumn('outcome', text, (c) => c.notNull())
		.$call(strict)
		.execute();
	await db.schema
		.createTable('sheet')
		.addColumn('id', text, (c) => c.primaryKey().notNull())
		.addColumn('body', text, (c) => c.notNull())
		.addColumn('retired', 'integer', (c) => c.notNull().check(sql`retired in (0, 1)`))
		.$call(strict)
		.execute();
	await db.schema
		.createTable('pattern')
		.addColumn('id', text, (c) => c.primaryKey().notNull())
		.addColumn('body', text, (c) => c.notNull())
		.addColumn('updated_at', text, (c) => c.notNull())
		.$call(strict)
		.execute();
}

/** Evidence: rows that are written once. */
async function recordTables(db: Kysely<unknown>): Promise<void> {
	const { text, blob, strict } = schemaWords(db);
	await db.schema
		.createTable('job')
		.addColumn('id', text, (c) => c.primaryKey().notNull())
		.addColumn('plan', text, (c) => c.notNull())
		.addColumn('plan_hash', text, (c) => c.notNull())
		.addColumn('opened_at', text, (c) => c.notNull())
		.$call(strict)
		.execute();
	await db.schema
		.createTable('event')
		.addColumn('id', text, (c) => c.primaryKey().notNull())
		.addColumn('job_id', text, (c) => c.notNull().references('job.id'))
		.addColumn('seq', 'integer', (c) => c.notNull().check(sql`seq >= 1`))
		.addColumn('event', text, (c) => c.notNull())
		.addColumn('recorded_at', text, (c) => c.notNull())
		.addColumn('prev_hash', text, (c) => c.notNull())
		.addColumn('hash', text, (c) => c.notNull())
		.addUniqueConstraint('event_place', ['job_id', 'seq'])
		.$call(strict)
		.execute();
	await db.schema
		.createTable('photo')
		.addColumn('hash', text, (c) => c.primaryKey().notNull())
		.addColumn('type', text, (c) => c.notNull())
		.addColumn('bytes', blob, (c) => c.notNull())
		.addColumn('added_at', text, (c) => c.notNull())
		.$call(strict)
		.execute();
}

export const firstSchema: Migration = {
	version: 1,
	name: 'first schema',
	async up(db) {
		await shopTables(db);
		await recordTables(db);
		for (const table of ['job', 'event', 'photo']) await writtenOnce(db, table);
	}
};
