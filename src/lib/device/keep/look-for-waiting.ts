import { keptActs } from './kept-acts';
import { openKept } from './kept-database';
import { KeptPhotos } from './kept-photos';
import { postActs } from './post-acts';
import { sendInTurn } from './send-in-turn';
import type { WaitingAct } from './waiting-act';

/** Sends what this person's waiting acts are. @returns what is left on this device; null where it keeps nothing */
export async function lookForWaiting(personId: string | null): Promise<WaitingAct[] | null> {
	const db = await openKept().catch(() => null);
	if (!db) return null;
	try {
		const store = keptActs(db);
		const isDue = ({ event, refusal }: WaitingAct) => event.by === personId && refusal === null;
		if (personId !== null && (await store.all()).some(isDue)) {
			const photos = new KeptPhotos(db);
			await sendInTurn(store, (acts) => postActs(acts, photos), personId);
		}
		return await store.all();
	} finally {
		db.close();
	}
}
