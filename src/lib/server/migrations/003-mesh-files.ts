import { sql } from 'kysely';
import type { Migration } from './migration';
import { schemaWords, writtenOnce, writtenOnceWhen } from './schema-words';

/** Mesh files under their hash, kept in parts that a row holds well. A kept file never changes. */
export const meshFiles: Migration = {
	version: 3,
	name: 'mesh files',
	async up(db) {
		const { text, blob, strict } = schemaWords(db);
		await db.schema
			.createTable('mesh_part')
			.addColumn('upload', text, (c) => c.notNull())
			.addColumn('part', 'integer', (c) => c.notNull().check(sql`part >= 0`))
			.addColumn('bytes', blob, (c) => c.notNull())
			.addColumn('added_at', text, (c) => c.notNull())
			.addPrimaryKeyConstraint('mesh_part_place', ['upload', 'part'])
			.$call(strict)
			.execute();
		await db.schema
			.createTable('mesh_file')
			.addColumn('hash', text, (c) => c.primaryKey().notNull())
			.addColumn('upload', text, (c) => c.notNull().unique())
			.addColumn('format', text, (c) => c.notNull())
			.addColumn('size', 'integer', (c) => c.notNull())
			.addColumn('added_at', text, (c) => c.notNull())
			.$call(strict)
			.execute();
		await writtenOnce(db, 'mesh_file');
		await writtenOnceWhen(db, 'mesh_part', {
			condition: 'exists (select 1 from mesh_file where mesh_file.upload = old.upload)',
			words: 'parts of a kept mesh file are written once and never changed'
		});
	}
};
