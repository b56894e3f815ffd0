import type { Db } from './database';
import { hashPin } from './pin-hash';

const SHORTEST = 12;
const LONGEST = 128;

/**
 * Why a password will not do for the owner's pages, in words; null when it will. Any characters, no rules
 * of which. Source: OWASP ASVS 4.0.3, 2.1.1, 2.1.2, 2.1.9; common words by common practice, no source.
 */
export function weakPasswordWords(password: string, names: readonly string[]): string | null {
	const length = [...password].length;
	if (length < SHORTEST || length > LONGEST) {
		return `Accepted: ${SHORTEST} to ${LONGEST} characters; four words you can picture do well.`;
	}
	const plain = password.toLowerCase().normalize('NFKC');
	if (new Set(plain).size < 6) return 'Too few different characters. Accepted: more variety.';
	if (/^(.{1,6}?)\1+$/su.test(plain)) return 'That repeats itself. Accepted: another one.';
	const used = [...names, 'password', 'glovewright', 'qwertyuiop', '1234567890']
		.map((name) => name.toLowerCase().trim())
		.filter((name) => name.length >= 4)
		.find((name) => plain.includes(name));
	return used ? `It holds “${used}”, which is tried first. Accepted: another one.` : null;
}

/** Gives a person their password for the owner's pages. The caller has checked who asks, and the words above. */
export async function setPassword(
	db: Db,
	personId: string,
	password: string,
	at: string
): Promise<void> {
	const password_hash = await hashPin(password.normalize('NFKC'));
	await db
		.updateTable('person')
		.set({ password_hash, password_set_at: at })
		.where('id', '=', personId)
		.execute();
}

/** Takes a forgotten password away; another is chosen with the PIN. @returns how many people of this name */
export async function forgetPassword(db: Db, name: string): Promise<number> {
	const { numUpdatedRows } = await db
		.updateTable('person')
		.set({ password_hash: null, password_set_at: null })
		.where('name', '=', name)
		.where('retired', '=', 0)
		.executeTakeFirst();
	return Number(numUpdatedRows);
}

export async function hasPassword(db: Db, personId: string): Promise<boolean> {
	const row = await db
		.selectFrom('person')
		.select('password_hash')
		.where('id', '=', personId)
		.executeTakeFirst();
	return !!row?.password_hash;
}
