import type { Posted } from './send-waiting';
import type { WaitingAct } from './waiting-act';
import type { KeptPhotos } from './kept-photos';

/** Posts one waiting act as it was done, its photos first. Never throws. */
export async function postAct(act: WaitingAct, photos: KeptPhotos): Promise<Posted> {
	const sent = await withSentPhotos(act, photos);
	if ('status' in sent) return sent;
	try {
		const answer = await fetch(`/api/jobs/${act.jobId}/events`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ id: act.id, seq: act.seq, event: sent.event })
		});
		if (answer.ok) {
			await photos.drop(act.event);
			return { status: 'written' };
		}
		// Also when somebody else is signed in meanwhile: the server writes an act for nobody but its doer.
		if (answer.status === 401 || answer.status === 403) return { status: 'sign in' };
		// The server is busy, full or stopping: it has judged nothing.
		if (answer.status === 429 || answer.status >= 500) return { status: 'no answer' };
		return { status: 'not taken', reason: await reasonIn(answer) };
	} catch {
		return { status: 'no answer' };
	}
}

async function withSentPhotos(
	{ event }: WaitingAct,
	photos: KeptPhotos
): Promise<{ event: WaitingAct['event'] } | Posted> {
	if (!('photos' in event) || !event.photos) return { event };
	const hashes: string[] = [];
	for (const hash of event.photos) {
		const sent = await photos.send(hash);
		if (!sent.ok) {
			return sent.stoppedBy
				? { status: sent.stoppedBy }
				: { status: 'not taken', reason: `A photo of it: ${sent.reason}` };
		}
		hashes.push(sent.hash);
	}
	return { event: { ...event, photos: hashes } };
}

/** Why it was not taken: the problem's own words, with the fields it names. */
async function reasonIn(answer: Response): Promise<string> {
	try {
		const problem: unknown = await answer.json();
		if (typeof problem !== 'object' || problem === null) return 'The server did not say why.';
		const { code, detail, errors } = problem as Record<string, unknown>;
		if (code === 'conflict') {
			return 'Somebody else entered something on this mold before this came in.';
		}
		const fields = Array.isArray(errors)
			? errors.flatMap((error: unknown) =>
					typeof error === 'object' && error !== null && 'message' in error
						? [String(error.message)]
						: []
				)
			: [];
		return [String(detail ?? 'The server did not say why.'), ...fields].join(' ');
	} catch {
		return `The server answered with ${answer.status}.`;
	}
}
