import type { Kysely } from 'kysely';
import type { Database, Db } from '../database';

export type Row = Record<string, unknown>;

interface PlainTable {
	/** Columns that hold JSON text; in an export they are JSON. */
	json?: readonly string[];
	/** Columns that leave the shop only when it moves: whoever has them can try every PIN. */
	secret?: readonly string[];
	/** Columns that rows are ordered by, so that two exports of one state are the same. */
	order: string | readonly string[];
}

/** Tables that an export holds row by row. */
export const PLAIN_TABLES: Partial<Record<keyof Database, PlainTable>> = {
	shop: { json: ['body'], order: 'id' },
	person: { secret: ['pin_hash', 'password_hash', 'password_set_at'], order: 'id' },
	sheet: { json: ['body'], order: 'id' },
	pattern: { json: ['body'], order: 'id' },
	setting: { order: 'name' },
	training_answer: { order: ['round', 'question'] },
	training_record: { order: 'round' }
};

/** Tables that an export holds in another form: jobs and events as records, photos and meshes as files. */
export const OWN_FORM: ReadonlyArray<keyof Database> = [
	'job',
	'event',
	'photo',
	'mesh_file',
	'mesh_part'
];

/** Tables that belong to one installation, not to the shop. */
export const LEFT_BEHIND: ReadonlyArray<keyof Database> = [
	'schema_version',
	'session',
	'device',
	'pin_attempt'
];

/** Rows of one plain table as they are exported. */
export async function plainRows(db: Db, table: string, withSecrets: boolean): Promise<Row[]> {
	const { json = [], secret = [], order } = plainTable(table);
	const rows = await anyTable(db)
		.selectFrom(table)
		.selectAll()
		.$call((query) => [order].flat().reduce((q, column) => q.orderBy(column), query))
		.execute();
	return rows.map((row) =>
		Object.fromEntries(
			Object.entries(row)
				.filter(([column]) => withSecrets || !secret.includes(column))
				.map(([column, value]) => [
					column,
					json.includes(column) ? (JSON.parse(String(value)) as unknown) : value
				])
		)
	);
}

/** Writes one exported row. @throws when its place is taken, or a column is not known */
export async function insertPlainRow(db: Db, table: string, row: Row): Promise<void> {
	const { json = [] } = plainTable(table);
	const stored = Object.fromEntries(
		Object.entries(row).map(([column, value]) => [
			column,
			json.includes(column) ? JSON.stringify(value) : value
		])
	);
	await anyTable(db).insertInto(table).values(stored).execute();
}

function plainTable(table: string): PlainTable {
	const plain = Object.entries(PLAIN_TABLES).find(([name]) => name === table)?.[1];
	if (!plain) throw new RangeError(`no plain table ${table}`);
	return plain;
}

/** The store with its tables by any name: here rows are only carried from one store to another. */
function anyTable(db: Db): Kysely<Record<string, Row>> {
	return db as unknown as Kysely<Record<string, Row>>;
}
