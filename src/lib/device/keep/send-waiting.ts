import { inOrder, type ActStore, type WaitingAct } from './waiting-act';

/** What the server made of one act. */
export type Posted =
	| { status: 'written' }
	/** Not taken, and why, in words. */
	| { status: 'not taken'; reason: string }
	/** Not looked at, since one before it on the same mold was not written. */
	| { status: 'held' }
	| { status: 'no answer' }
	/** The server itself answers nothing: whatever else waits would wait for its answer in vain. */
	| { status: 'no line' }
	| { status: 'sign in' };

/** Posts acts and gives an answer for each; after one that is not written it holds those behind it on the same mold. */
export type Post = (acts: readonly WaitingAct[]) => Promise<Posted[]>;

export interface Sent {
	written: number;
	/** How many now need a person to look at them. */
	needLook: number;
	/** Why the rest still waits; null when nothing does. */
	stoppedBy: 'no answer' | 'sign in' | null;
}

/** In one request: few enough that a slow line gets an answer. */
const AT_ONCE = 20;
const FOLLOWED = 'It was done after an entry that was not taken, and may have counted on it.';

/**
 * Sends what waits, in order. What is not taken is marked with its reason, and so is all that was
 * done after it on the same mold; nothing is thrown away. Acts of somebody else than who is signed in
 * go on waiting, and so does what follows them: the server writes an act under the name of whoever sends it.
 */
export async function sendWaiting(store: ActStore, post: Post, personId: string): Promise<Sent> {
	const sent: Sent = { written: 0, needLook: 0, stoppedBy: null };
	const due = inOrder(await store.all()).filter(({ refusal }) => refusal === null);
	const own = beforeOthers(due, personId);
	if (own.length < due.length) sent.stoppedBy = 'sign in';

	/** Molds on which an act was not written; with words, when what follows needs a look too. */
	const halted = new Map<string, string | null>();
	const followed = async (act: WaitingAct) => {
		const words = halted.get(act.jobId);
		if (!words) return;
		await store.put({ ...act, refusal: words });
		sent.needLook += 1;
	};
	let isDead = false;
	for (let from = 0; from < own.length; from += AT_ONCE) {
		const acts = own.slice(from, from + AT_ONCE);
		const open = acts.filter(({ jobId }) => !halted.has(jobId));
		for (const act of acts) if (halted.has(act.jobId)) await followed(act);
		const answers: Posted[] = open.length > 0 && !isDead ? await post(open) : [];
		isDead ||= answers.some(({ status }) => status === 'no line');
		for (const [index, act] of open.entries()) {
			const answer = answers[index] ?? { status: 'no answer' };
			if (answer.status === 'written') {
				await store.drop(act.id);
				sent.written += 1;
			} else if (halted.has(act.jobId)) {
				await followed(act);
			} else if (answer.status === 'not taken') {
				await store.put({ ...act, refusal: answer.reason });
				sent.needLook += 1;
				halted.set(act.jobId, FOLLOWED);
			} else {
				// Other molds may still get through: one act that upsets the server must not hold them all.
				halted.set(act.jobId, null);
				if (answer.status === 'sign in') sent.stoppedBy = 'sign in';
				else if (answer.status !== 'held') sent.stoppedBy = 'no answer';
			}
		}
	}
	return sent;
}

/** The acts of this person that have none of somebody else's before them on their mold. */
function beforeOthers(acts: readonly WaitingAct[], personId: string): WaitingAct[] {
	const others = new Set<string>();
	return acts.filter(({ jobId, event }) => {
		if (event.by !== personId) others.add(jobId);
		return !others.has(jobId);
	});
}
