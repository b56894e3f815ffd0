import { sql } from 'kysely';
import type { Migration } from './migration';
import { schemaWords, writtenOnce } from './schema-words';

/** What people answered in the refresher, and the rounds they passed: evidence, written once. */
export const training: Migration = {
	version: 5,
	name: 'training',
	async up(db) {
		const { text, strict } = schemaWords(db);
		await strict(
			db.schema
				.createTable('training_answer')
				.addColumn('round', text, (c) => c.notNull())
				.addColumn('question', text, (c) => c.notNull())
				.addColumn('person_id', text, (c) => c.notNull().references('person.id'))
				.addColumn('kind', text, (c) => c.notNull())
				.addColumn('is_right', 'integer', (c) => c.notNull().check(sql`is_right in (0, 1)`))
				.addColumn('answered_at', text, (c) => c.notNull())
				.addColumn('text_hash', text, (c) => c.notNull())
				.addPrimaryKeyConstraint('training_answer_place', ['round', 'question'])
		).execute();
		await strict(
			db.schema
				.createTable('training_record')
				.addColumn('round', text, (c) => c.primaryKey().notNull())
				.addColumn('person_id', text, (c) => c.notNull().references('person.id'))
				.addColumn('kind', text, (c) => c.notNull())
				.addColumn('passed_at', text, (c) => c.notNull())
				.addColumn('expires_at', text, (c) => c.notNull())
				.addColumn('text_hash', text, (c) => c.notNull())
		).execute();
		await db.schema
			.createIndex('training_answer_of_person')
			.on('training_answer')
			.columns(['person_id', 'kind'])
			.execute();
		for (const table of ['training_answer', 'training_record']) await writtenOnce(db, table);
	}
};
