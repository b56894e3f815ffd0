import type { Migration } from './migration';
import { schemaWords } from './schema-words';

/** A password for the owner's own pages, devices that were registered, and settings that no plan needs. */
export const ownerPassword: Migration = {
	version: 4,
	name: 'owner password',
	async up(db) {
		const { text, strict } = schemaWords(db);
		for (const column of ['password_hash', 'password_set_at']) {
			await db.schema.alterTable('person').addColumn(column, text).execute();
		}
		for (const column of ['device_id', 'unlocked_at']) {
			await db.schema.alterTable('session').addColumn(column, text).execute();
		}
		await db.schema
			.alterTable('pin_attempt')
			.addColumn('secret', text, (c) => c.notNull().defaultTo('pin'))
			.execute();
		await strict(
			db.schema
				.createTable('device')
				.addColumn('id', text, (c) => c.primaryKey().notNull())
				.addColumn('token_hash', text, (c) => c.notNull().unique())
				.addColumn('name', text, (c) => c.notNull())
				.addColumn('registered_at', text, (c) => c.notNull())
				.addColumn('registered_by', text, (c) => c.notNull())
				.addColumn('ended_at', text)
		).execute();
		await strict(
			db.schema
				.createTable('setting')
				.addColumn('name', text, (c) => c.primaryKey().notNull())
				.addColumn('value', text, (c) => c.notNull())
		).execute();
	}
};
