import { now } from '$lib/server/clock';
import type { Db } from '$lib/server/database';
import { checkPin } from '$lib/server/pin';
import { wrongPinWords } from '$lib/server/pin-words';

/** A tablet may lie signed in on the bench, so whoever changes people says their own PIN. */
export async function ownPinProblem(
	db: Db,
	personId: string,
	form: FormData,
	address: string
): Promise<string | null> {
	const pin = String(form.get('ownPin') ?? '');
	const answer = await checkPin(db, { personId, pin, address, at: now() });
	return answer.ok ? null : wrongPinWords(answer.waitS);
}
