import type { Db } from './database';
import { exclusively } from './dialect';
import { pinMatches } from './pin-hash';

export { hashPin } from './pin-hash';

/** A shared bench is one address for many people: it takes more before all of them must wait. */
const FREE_TRIES = { person_id: 3, address: 10 } as const;
const FIRST_WAIT_S = 5;
const LONGEST_WAIT_S = 15 * 60;

type Secret = 'pin' | 'password';

export interface PinTry {
	personId: string;
	pin: string;
	/** Network address the try comes from. */
	address: string;
	at: string;
	/** The PIN, unless said otherwise. Each has its own count: a right PIN does not end the wait after wrong passwords. */
	secret?: Secret;
}

/** `waitS`: how long until the next try is looked at; 0 when it may be made at once. */
export type PinAnswer = { ok: true } | { ok: false; waitS: number };

/**
 * Checks a PIN. From the third wrong try in a row for a person, or the tenth from an address, the next
 * ones are not looked at for 5 s, doubling to 15 min. Every try is logged, the PIN never.
 */
export async function checkPin(
	db: Db,
	{ personId, pin, address, at, secret = 'pin' }: PinTry
): Promise<PinAnswer> {
	const opened = await exclusively(db, 'PINs', async (trx) => {
		const waitS = await waitBefore(trx, { personId, address, at, secret });
		const row = await trx
			.insertInto('pin_attempt')
			// Wrong until shown right, so that many tries at once all count.
			.values({
				person_id: personId,
				address,
				at,
				outcome: waitS > 0 ? 'too soon' : 'wrong',
				secret
			})
			.returning('n')
			.executeTakeFirstOrThrow();
		const person = await trx
			.selectFrom('person')
			.select(['pin_hash', 'password_hash'])
			.where('id', '=', personId)
			.where('retired', '=', 0)
			.executeTakeFirst();
		return { waitS, n: row.n, kept: secret === 'pin' ? person?.pin_hash : person?.password_hash };
	});
	if (opened.waitS > 0) return { ok: false, waitS: opened.waitS };

	if (opened.kept && (await pinMatches(pin, opened.kept))) {
		await db
			.updateTable('pin_attempt')
			.set({ outcome: 'right' })
			.where('n', '=', opened.n)
			.execute();
		return { ok: true };
	}
	return { ok: false, waitS: await waitBefore(db, { personId, address, at, secret }) };
}

async function waitBefore(
	db: Db,
	{ personId, address, at, secret }: Required<Omit<PinTry, 'pin'>>
): Promise<number> {
	const waits = [
		await waitFor(db, ['person_id', personId], at, secret),
		await waitFor(db, ['address', address], at, secret)
	];
	return Math.max(...waits);
}

async function waitFor(
	db: Db,
	[column, value]: ['person_id' | 'address', string],
	at: string,
	secret: Secret
): Promise<number> {
	const tries = await db
		.selectFrom('pin_attempt')
		.select(['at', 'outcome'])
		.where(column, '=', value)
		.where('secret', '=', secret)
		.where('outcome', '!=', 'too soon')
		.orderBy('n', 'desc')
		.limit(32)
		.execute();
	const right = tries.findIndex((t) => t.outcome === 'right');
	const wrongInARow = right === -1 ? tries.length : right;
	const last = tries[0];
	if (!last || wrongInARow < FREE_TRIES[column]) return 0;

	const wholeS = Math.min(LONGEST_WAIT_S, FIRST_WAIT_S * 2 ** (wrongInARow - FREE_TRIES[column]));
	const passedS = (Date.parse(at) - Date.parse(last.at)) / 1000;
	// A clock that was set back must not make the wait longer than it was.
	return Math.ceil(Math.min(wholeS, Math.max(0, wholeS - passedS)));
}
