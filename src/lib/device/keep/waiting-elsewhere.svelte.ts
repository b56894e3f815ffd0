import { keptActs } from './kept-acts';
import { openKept } from './kept-database';
import { KeptPhotos } from './kept-photos';
import { postActs } from './post-acts';
import { sendInTurn } from './send-in-turn';
import type { WaitingAct } from './waiting-act';

/** What waits on this device, seen from any page: sent from there too, and never forgotten. */
export class WaitingElsewhere {
	acts = $state.raw<WaitingAct[]>([]);

	/** Sends what this person's waiting acts are, and shows what is left. */
	async look(personId: string | null): Promise<void> {
		const db = await openKept().catch(() => null);
		if (!db) return;
		try {
			const store = keptActs(db);
			const isDue = ({ event, refusal }: WaitingAct) => event.by === personId && refusal === null;
			if (personId !== null && (await store.all()).some(isDue)) {
				const photos = new KeptPhotos(db);
				await sendInTurn(store, (acts) => postActs(acts, photos), personId);
			}
			this.acts = await store.all();
		} finally {
			db.close();
		}
	}
}
