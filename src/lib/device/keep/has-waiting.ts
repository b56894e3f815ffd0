import { keptActs } from './kept-acts';
import { openKept } from './kept-database';

/** Whether acts on this mold wait on this device; false where the browser keeps nothing. */
export async function hasWaiting(jobId: string): Promise<boolean> {
	const db = await openKept().catch(() => null);
	if (!db) return false;
	try {
		return (await keptActs(db).all()).some((act) => act.jobId === jobId);
	} finally {
		db.close();
	}
}
