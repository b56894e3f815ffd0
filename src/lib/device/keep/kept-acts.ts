import type { KeptDatabase } from './kept-database';
import { inOrder, type ActStore } from './waiting-act';

/** Waiting acts in the browser's own database: they outlive a reload, a crash and an empty battery. */
export function keptActs(db: KeptDatabase): ActStore {
	return {
		all: async () => inOrder(await db.getAll('acts')),
		put: async (act) => void (await db.put('acts', act)),
		drop: (id) => db.delete('acts', id)
	};
}
