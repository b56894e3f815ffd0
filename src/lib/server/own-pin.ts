import type { Db } from './database';
import { getPerson, setPin } from './people.repository';
import { checkPin } from './pin';

export interface NewPin {
	personId: string;
	/** The one in force, typed anew: a tablet may lie signed in on the bench. */
	pin: string;
	newPin: string;
	address: string;
	at: string;
}

export type ChosenPin =
	{ status: 'chosen' } | { status: 'wrong PIN'; waitS: number } | { status: 'same PIN' };

/**
 * Puts a PIN of one's own in place of the one in force, and ends the sessions begun with that. Whoever
 * gave a PIN knows it, so the given one is not taken again.
 *
 * @throws ZodError when the new PIN is not 4 to 8 digits
 */
export async function chooseOwnPin(
	db: Db,
	{ personId, pin, newPin, address, at }: NewPin
): Promise<ChosenPin> {
	const answer = await checkPin(db, { personId, pin, address, at });
	if (!answer.ok) return { status: 'wrong PIN', waitS: answer.waitS };
	if (newPin === pin) return { status: 'same PIN' };
	await setPin(db, personId, newPin, { by: personId, at });
	return { status: 'chosen' };
}

/** Whether the PIN in force was given by somebody else: it opens the door to one's own, and signs nothing. */
export async function hasGivenPin(db: Db, personId: string): Promise<boolean> {
	return ((await getPerson(db, personId))?.pinGivenBy ?? null) !== null;
}
