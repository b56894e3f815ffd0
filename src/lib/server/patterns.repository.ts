import { randomUUID } from 'node:crypto';
import { patternSchema, type Pattern } from '$lib/core/geometry/pattern';
import type { Db } from './database';

export interface PatternRow {
	id: string;
	pattern: Pattern;
	updatedAt: string;
}

/** Patterns in order of name. */
export async function listPatterns(db: Db): Promise<PatternRow[]> {
	const rows = await db.selectFrom('pattern').selectAll().execute();
	return rows.map(patternOf).sort((a, b) => a.pattern.name.localeCompare(b.pattern.name, 'en'));
}

export async function getPattern(db: Db, id: string): Promise<PatternRow | null> {
	const row = await db.selectFrom('pattern').selectAll().where('id', '=', id).executeTakeFirst();
	return row ? patternOf(row) : null;
}

/**
 * Adds a pattern, or replaces the one with this id. Jobs keep the pattern they were planned with.
 *
 * @returns its id
 * @throws ZodError when the pattern breaks its schema
 */
export async function savePattern(
	db: Db,
	{ id = randomUUID(), pattern, at }: { id?: string; pattern: Pattern; at: string }
): Promise<string> {
	const row = { body: JSON.stringify(patternSchema.parse(pattern)), updated_at: at };
	await db
		.insertInto('pattern')
		.values({ id, ...row })
		.onConflict((conflict) => conflict.column('id').doUpdateSet(row))
		.execute();
	return id;
}

function patternOf(row: { id: string; body: string; updated_at: string }): PatternRow {
	return {
		id: row.id,
		pattern: patternSchema.parse(JSON.parse(row.body)),
		updatedAt: row.updated_at
	};
}
