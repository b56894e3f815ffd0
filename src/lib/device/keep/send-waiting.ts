import { inOrder, type ActStore, type WaitingAct } from './waiting-act';

/** What the server made of one act. */
export type Posted =
	| { status: 'written' }
	/** Not taken, and why, in words. */
	| { status: 'not taken'; reason: string }
	| { status: 'no answer' }
	| { status: 'sign in' };

export interface Sent {
	written: number;
	/** How many now need a person to look at them. */
	needLook: number;
	/** Why the rest still waits; null when nothing does. */
	stoppedBy: 'no answer' | 'sign in' | null;
}

const FOLLOWED = 'It was done after an entry that was not taken, and may have counted on it.';

/**
 * Sends what waits, in order. What is not taken is marked with its reason, and so is all that was
 * done after it on the same mold; nothing is thrown away. Acts of somebody else than who is signed in
 * go on waiting: the server writes an act under the name of whoever sends it.
 */
export async function sendWaiting(
	store: ActStore,
	post: (act: WaitingAct) => Promise<Posted>,
	personId: string
): Promise<Sent> {
	const sent: Sent = { written: 0, needLook: 0, stoppedBy: null };
	const halted = new Map<string, string | null>();
	for (const act of inOrder(await store.all())) {
		if (act.refusal !== null) continue;
		const halt = halted.get(act.jobId);
		if (halt !== undefined) {
			// Behind one of somebody else's it only waits.
			if (halt !== null) {
				await store.put({ ...act, refusal: halt });
				sent.needLook += 1;
			}
			continue;
		}
		if (act.event.by !== personId) {
			halted.set(act.jobId, null);
			sent.stoppedBy ??= 'sign in';
			continue;
		}
		const answer = await post(act);
		switch (answer.status) {
			case 'written':
				await store.drop(act.id);
				sent.written += 1;
				break;
			case 'not taken':
				await store.put({ ...act, refusal: answer.reason });
				halted.set(act.jobId, FOLLOWED);
				sent.needLook += 1;
				break;
			default:
				// Other molds may still get through: one act that upsets the server must not hold them all.
				halted.set(act.jobId, null);
				sent.stoppedBy = answer.status;
		}
	}
	return sent;
}
