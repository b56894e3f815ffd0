import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import { isLocale, type Locale } from '$lib/core/language/locale';
import { now } from './clock';
import type { Db } from './database';
import { exclusively } from './dialect';
import { hashPin, pinSchema } from './pin-hash';

export const ROLES = ['apprentice', 'mold maker', 'supervisor', 'owner'] as const;
export type Role = (typeof ROLES)[number];

export interface Person {
	id: string;
	name: string;
	role: Role;
	/** Left the shop: stays in every record, can no longer sign in. */
	retired: boolean;
	/** Id of who gave them the PIN in force, and knows it; null when it is their own. */
	pinGivenBy: string | null;
	/** Since when that PIN holds; null when it is from before this was kept. */
	pinSetAt: string | null;
	/** The language they chose to read, and how they write numbers; null until they choose. */
	locale: Locale | null;
}

export const newPersonSchema = z.strictObject({
	name: z.string().trim().min(1).max(120),
	role: z.enum(ROLES),
	pin: pinSchema
});
export type NewPerson = z.infer<typeof newPersonSchema>;

/** What is read of a person; never what a PIN is checked with. */
export const PERSON_COLUMNS = [
	'id',
	'name',
	'role',
	'retired',
	'pin_given_by',
	'pin_set_at',
	'locale'
] as const;

/** Everybody in order of name, retired people too. */
export async function listPeople(db: Db): Promise<Person[]> {
	const rows = await db.selectFrom('person').select(PERSON_COLUMNS).execute();
	return rows.map(personOf).sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

export async function getPerson(db: Db, id: string): Promise<Person | null> {
	const row = await db
		.selectFrom('person')
		.select(PERSON_COLUMNS)
		.where('id', '=', id)
		.executeTakeFirst();
	return row ? personOf(row) : null;
}

/** May sign hold points and decide deviations. */
export function maySign(person: Pick<Person, 'role'>): boolean {
	return person.role === 'supervisor' || person.role === 'owner';
}

/**
 * Adds a person; with `by`, whoever adds them gives them a first PIN that is not their own yet.
 *
 * @throws ZodError when name, role or PIN break `newPersonSchema`; parse the form with it first
 */
export async function addPerson(
	db: Db,
	person: NewPerson,
	at = now(),
	by: string | null = null
): Promise<Person> {
	const { name, role, pin } = newPersonSchema.parse(person);
	const id = randomUUID();
	const pin_hash = await hashPin(pin);
	await db
		.insertInto('person')
		.values({
			id,
			name,
			role,
			pin_hash,
			retired: 0,
			added_at: at,
			pin_given_by: by,
			pin_set_at: at
		})
		.execute();
	return { id, name, role, retired: false, pinGivenBy: by, pinSetAt: at, locale: null };
}

/** Keeps the language that a person chose. */
export async function setLocale(db: Db, id: string, locale: Locale): Promise<void> {
	await db.updateTable('person').set({ locale }).where('id', '=', id).execute();
}

/** Retires a person and ends their sessions. The last one who may sign cannot be retired. */
export async function retirePerson(
	db: Db,
	id: string
): Promise<'retired' | 'unknown' | 'last supervisor'> {
	return exclusively(db, 'people', async (trx) => {
		const people = await listPeople(trx);
		const person = people.find((p) => p.id === id);
		if (!person) return 'unknown';
		const signers = people.filter((p) => !p.retired && maySign(p));
		if (signers.length === 1 && signers[0]?.id === id) return 'last supervisor';
		await trx.updateTable('person').set({ retired: 1 }).where('id', '=', id).execute();
		await trx.deleteFrom('session').where('person_id', '=', id).execute();
		return 'retired';
	});
}

/**
 * Gives a person a new PIN and ends their sessions. Given by another it is not their own.
 *
 * @throws ZodError when the PIN is not 4 to 8 digits
 */
export async function setPin(
	db: Db,
	id: string,
	pin: string,
	{ by, at = now() }: { by: string; at?: string }
): Promise<'set' | 'unknown'> {
	const pin_hash = await hashPin(pinSchema.parse(pin));
	return db.transaction().execute(async (trx) => {
		const { numUpdatedRows } = await trx
			.updateTable('person')
			.set({ pin_hash, pin_given_by: by === id ? null : by, pin_set_at: at })
			.where('id', '=', id)
			.executeTakeFirst();
		await trx.deleteFrom('session').where('person_id', '=', id).execute();
		return numUpdatedRows === 1n ? 'set' : 'unknown';
	});
}

/** A person from these columns. */
export function personOf(row: {
	id: string;
	name: string;
	role: string;
	retired: number;
	pin_given_by: string | null;
	pin_set_at: string | null;
	locale?: string | null;
}): Person {
	return {
		id: row.id,
		name: row.name,
		role: z.enum(ROLES).parse(row.role),
		retired: row.retired === 1,
		pinGivenBy: row.pin_given_by,
		pinSetAt: row.pin_set_at,
		locale: isLocale(row.locale) ? row.locale : null
	};
}
