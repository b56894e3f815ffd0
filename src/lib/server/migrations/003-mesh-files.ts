import { sql } from 'kysely';
import type { Migration } from './migration';

const strict = sql`strict`;

/** Mesh files under their hash, kept in parts that a row holds well. A kept file never changes. */
export const meshFiles: Migration = {
	version: 3,
	name: 'mesh files',
	async up(db) {
		await db.schema
			.createTable('mesh_part')
			.addColumn('upload', 'text', (c) => c.notNull())
			.addColumn('part', 'integer', (c) => c.notNull().check(sql`part >= 0`))
			.addColumn('bytes', 'blob', (c) => c.notNull())
			.addColumn('added_at', 'text', (c) => c.notNull())
			.addPrimaryKeyConstraint('mesh_part_place', ['upload', 'part'])
			.modifyEnd(strict)
			.execute();
		await db.schema
			.createTable('mesh_file')
			.addColumn('hash', 'text', (c) => c.primaryKey().notNull())
			.addColumn('upload', 'text', (c) => c.notNull().unique())
			.addColumn('format', 'text', (c) => c.notNull())
			.addColumn('size', 'integer', (c) => c.notNull())
			.addColumn('added_at', 'text', (c) => c.notNull())
			.modifyEnd(strict)
			.execute();
		for (const verb of ['update', 'delete']) {
			await sql
				.raw(
					`create trigger mesh_file_no_${verb} before ${verb} on mesh_file begin
						select raise(abort, 'rows of mesh_file are written once and never changed');
					end`
				)
				.execute(db);
			await sql
				.raw(
					`create trigger mesh_part_no_${verb} before ${verb} on mesh_part
					when exists (select 1 from mesh_file where mesh_file.upload = old.upload) begin
						select raise(abort, 'parts of a kept mesh file are written once and never changed');
					end`
				)
				.execute(db);
		}
	}
};
