import type { Migration } from './migration';
import { schemaWords } from './schema-words';

/** The language somebody reads, and how they write numbers; null until they choose. */
export const personLocale: Migration = {
	version: 7,
	name: 'person locale',
	async up(db) {
		const { text } = schemaWords(db);
		await db.schema.alterTable('person').addColumn('locale', text).execute();
	}
};
