import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { KeptJob } from './kept-job';
import type { WaitingAct } from './waiting-act';

interface Kept extends DBSchema {
	/** Molds opened at this bench, by their id: what is needed to go on without the server. */
	jobs: { key: string; value: KeptJob };
	/** Acts the server has not taken yet, by their id. */
	acts: { key: string; value: WaitingAct };
	/** Photos of such acts, by their SHA-256. */
	photos: { key: string; value: Blob };
}

export type KeptDatabase = IDBPDatabase<Kept>;

export const KEPT_DATABASE = 'glovewright';

/** @throws DOMException where the browser keeps nothing, as in some private windows */
export function openKept(): Promise<KeptDatabase> {
	return openDB<Kept>(KEPT_DATABASE, 1, {
		upgrade(db) {
			db.createObjectStore('jobs', { keyPath: 'jobId' });
			db.createObjectStore('acts', { keyPath: 'id' });
			db.createObjectStore('photos');
		}
	});
}
