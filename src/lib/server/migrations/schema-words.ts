import { sql, type CreateTableBuilder, type Kysely, type RawBuilder } from 'kysely';
import { isPostgres } from '../dialect';

interface SchemaWords {
	/** Text that is compared byte by byte, whatever language the database was made for. */
	text: 'text' | RawBuilder<unknown>;
	blob: 'blob' | 'bytea';
	/** Ends a table's definition: types are kept, not converted. */
	strict: (table: CreateTableBuilder<string, string>) => CreateTableBuilder<string, string>;
}

/** How the store at hand says what both can do. */
export function schemaWords(db: Parameters<typeof isPostgres>[0]): SchemaWords {
	return isPostgres(db)
		? { text: sql`text collate "C"`, blob: 'bytea', strict: (table) => table }
		: { text: 'text', blob: 'blob', strict: (table) => table.modifyEnd(sql`strict`) };
}

/** Rows of `table` can be added and read, nothing else. */
export async function writtenOnce(db: Kysely<unknown>, table: string): Promise<void> {
	const words = `rows of ${table} are written once and never changed`;
	if (isPostgres(db)) {
		await refuseOnPostgres(db, table, words);
		await sql
			.raw(
				`create trigger ${table}_no_truncate before truncate on ${table}
					for each statement execute function ${table}_is_written_once()`
			)
			.execute(db);
		return;
	}
	await refuseOnSqlite(db, table, words);
}

/** Rows of `table` that `condition` holds for can no longer be changed; it speaks of the row as `old`. */
export async function writtenOnceWhen(
	db: Kysely<unknown>,
	table: string,
	{ condition, words }: { condition: string; words: string }
): Promise<void> {
	await (isPostgres(db)
		? refuseOnPostgres(db, table, words, condition)
		: refuseOnSqlite(db, table, words, `when ${condition}`));
}

async function refuseOnSqlite(db: Kysely<unknown>, table: string, words: string, when = '') {
	for (const verb of ['update', 'delete']) {
		await sql
			.raw(
				`create trigger ${table}_no_${verb} before ${verb} on ${table} ${when} begin
					select raise(abort, '${words}');
				end`
			)
			.execute(db);
	}
}

async function refuseOnPostgres(
	db: Kysely<unknown>,
	table: string,
	words: string,
	condition = 'true'
) {
	await sql
		.raw(
			`create function ${table}_is_written_once() returns trigger language plpgsql as $$ begin
				if tg_op = 'TRUNCATE' then raise exception '${words}'; end if;
				if ${condition} then raise exception '${words}'; end if;
				if tg_op = 'DELETE' then return old; end if;
				return new;
			end $$`
		)
		.execute(db);
	for (const verb of ['update', 'delete']) {
		await sql
			.raw(
				`create trigger ${table}_no_${verb} before ${verb} on ${table}
					for each row execute function ${table}_is_written_once()`
			)
			.execute(db);
	}
}
