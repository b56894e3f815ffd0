import { now } from '$lib/server/clock';
import { headListText, verifyStore } from '$lib/server/keep/verify-store';
import { requireUnlocked } from '$lib/server/unlock';
import type { RequestEvent } from './$types';

/** The last hash of every mold's log, to be kept elsewhere. Damaged molds are not in it. */
export async function GET(event: RequestEvent) {
	await requireUnlocked(event);
	const { db, shop } = event.locals;
	const at = now();
	const { heads } = await verifyStore(db);
	return new Response(headListText(heads, shop?.name ?? '', at), {
		headers: {
			'content-type': 'application/json',
			'content-disposition': `attachment; filename="heads-${at.slice(0, 10)}.json"`
		}
	});
}
