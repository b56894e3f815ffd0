import type { Migration } from './migration';
import { schemaWords } from './schema-words';

/** Who gave the PIN in force, and since when it holds. Of PINs from before nothing is known. */
export const whosePin: Migration = {
	version: 2,
	name: 'whose PIN',
	async up(db) {
		const { text } = schemaWords(db);
		await db.schema.alterTable('person').addColumn('pin_given_by', text).execute();
		await db.schema.alterTable('person').addColumn('pin_set_at', text).execute();
	}
};
