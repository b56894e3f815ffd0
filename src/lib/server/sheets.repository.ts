import { sheetSchema, type Sheet } from '$lib/core/materials/sheet';
import type { Db } from './database';
import { exclusively } from './dialect';

/** The library in order of name; retired sheets only when asked for. */
export async function listSheets(
	db: Db,
	{ withRetired = false }: { withRetired?: boolean } = {}
): Promise<Sheet[]> {
	const rows = await db
		.selectFrom('sheet')
		.select('body')
		.$if(!withRetired, (query) => query.where('retired', '=', 0))
		.execute();
	return rows.map(sheetOf).sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

export async function getSheet(db: Db, id: string): Promise<Sheet | null> {
	const row = await db.selectFrom('sheet').select('body').where('id', '=', id).executeTakeFirst();
	return row ? sheetOf(row) : null;
}

/**
 * Adds a sheet, or replaces the one with the same id. Jobs keep the sheet they were planned with.
 *
 * @throws ZodError when the sheet breaks its schema
 */
export async function saveSheet(db: Db, sheet: Sheet): Promise<void> {
	const parsed = sheetSchema.parse(sheet);
	const row = { body: JSON.stringify(parsed), retired: parsed.retired ? 1 : 0 };
	await db
		.insertInto('sheet')
		.values({ id: parsed.id, ...row })
		.onConflict((conflict) => conflict.column('id').doUpdateSet(row))
		.execute();
}

/** Takes a sheet out of the library's lists; it stays readable. @returns false when there is none */
export async function retireSheet(db: Db, id: string): Promise<boolean> {
	return exclusively(db, `sheet ${id}`, async (trx) => {
		const sheet = await getSheet(trx, id);
		if (!sheet) return false;
		await saveSheet(trx, { ...sheet, retired: true });
		return true;
	});
}

function sheetOf(row: { body: string }): Sheet {
	return sheetSchema.parse(JSON.parse(row.body));
}
