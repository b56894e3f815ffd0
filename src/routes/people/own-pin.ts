import { durationText } from '$lib/core/quantity/duration-text';
import { now } from '$lib/server/clock';
import type { Db } from '$lib/server/database';
import { checkPin } from '$lib/server/pin';

/** A tablet may lie signed in on the bench, so whoever changes people says their own PIN. */
export async function ownPinProblem(
	db: Db,
	personId: string,
	form: FormData,
	address: string
): Promise<string | null> {
	const pin = String(form.get('ownPin') ?? '');
	const answer = await checkPin(db, { personId, pin, address, at: now() });
	if (answer.ok) return null;
	const wait = answer.waitS > 0 ? ` Wait ${durationText(answer.waitS)}, then try again.` : '';
	return `That is not your own PIN.${wait}`;
}
