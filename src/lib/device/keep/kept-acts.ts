import type { KeptDatabase } from './kept-database';
import { inOrder, type ActStore } from './waiting-act';

/** Waiting acts in the browser's own database: they outlive a reload, a crash and an empty battery. */
export function keptActs(db: KeptDatabase): ActStore {
	return {
		all: async () => inOrder(await db.getAll('acts')),
		put: async (act) => void (await db.put('acts', act)),
		drop: async (id) => {
			// In one go: an act without its photos would be another act to the server.
			const trx = db.transaction(['acts', 'photos'], 'readwrite');
			const acts = trx.objectStore('acts');
			const dropped = await acts.get(id);
			await acts.delete(id);
			const needed = new Set((await acts.getAll()).flatMap(({ event }) => event.photos ?? []));
			for (const hash of dropped?.event.photos ?? []) {
				if (!needed.has(hash)) await trx.objectStore('photos').delete(hash);
			}
			await trx.done;
		}
	};
}
