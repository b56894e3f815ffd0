import type { ProcessEvent } from '$lib/core/process/events';
import { deviceNow } from '../device-now';
import type { KeptPhotos } from './kept-photos';
import type { Posted } from './send-waiting';
import { serverAnswers } from './server-answers';
import type { WaitingAct } from './waiting-act';

const PATIENCE_MS = 30_000;

type Answer = { status: number; problem?: unknown };

/**
 * Posts waiting acts as they were done, in one request, their photos first. After one that is not written
 * those behind it on the same mold are not sent, or the server holds them. Never throws.
 *
 * @returns one answer for each act, in their order
 */
export async function postActs(acts: readonly WaitingAct[], photos: KeptPhotos): Promise<Posted[]> {
	const posted = new Map<string, Posted>();
	const ready: Array<{ act: WaitingAct; event: ProcessEvent }> = [];
	const stopped = new Set<string>();
	for (const act of acts) {
		if (stopped.has(act.jobId)) continue;
		const sent = await withSentPhotos(act, photos);
		if ('event' in sent) {
			ready.push({ act, event: sent.event });
			continue;
		}
		posted.set(act.id, sent);
		stopped.add(act.jobId);
	}
	for (const [id, answer] of await postReady(ready)) posted.set(id, answer);
	return acts.map(({ id }) => posted.get(id) ?? { status: 'held' });
}

async function postReady(
	ready: ReadonlyArray<{ act: WaitingAct; event: ProcessEvent }>
): Promise<Array<[id: string, Posted]>> {
	if (ready.length === 0) return [];
	const all = (posted: Posted) => ready.map(({ act }): [string, Posted] => [act.id, posted]);
	// What this device's clock says as it sends, so that a clock that is wrong shows in the record.
	const sentAt = deviceNow();
	const acts = ready.map(({ act: { id, jobId, seq }, event }) => {
		return { id, jobId, seq, event: { ...event, sentAt } };
	});
	try {
		const answer = await fetch('/api/acts', {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ acts }),
			// Without an answer they are sent again under the same ids.
			signal: AbortSignal.timeout(PATIENCE_MS)
		});
		// Also when somebody else is signed in meanwhile: the server writes an act for nobody but its doer.
		if (answer.status === 401 || answer.status === 403) return all({ status: 'sign in' });
		// The server is busy, full or stopping: it has judged nothing.
		if (answer.status === 429 || answer.status >= 500) return all({ status: 'no answer' });
		if (answer.ok) {
			const { answers } = (await answer.json()) as { answers: Answer[] };
			return ready.map(({ act }, index) => [act.id, postedOf(answers[index])]);
		}
		// One of them upsets the whole request: found by sending each by itself.
		if (ready.length > 1) return oneByOne(ready);
		return all({ status: 'not taken', reason: reasonIn(await answer.json(), answer.status) });
	} catch {
		// One request that fails may be to blame itself; a server that is away is asked for nothing more.
		return all({ status: (await serverAnswers()) ? 'no answer' : 'no line' });
	}
}

async function oneByOne(
	ready: ReadonlyArray<{ act: WaitingAct; event: ProcessEvent }>
): Promise<Array<[id: string, Posted]>> {
	const posted: Array<[string, Posted]> = [];
	const stopped = new Set<string>();
	for (const one of ready) {
		if (stopped.has(one.act.jobId)) continue;
		const [answer] = await postReady([one]);
		if (!answer) continue;
		posted.push(answer);
		if (answer[1].status !== 'written') stopped.add(one.act.jobId);
	}
	return posted;
}

function postedOf(answer: Answer | undefined): Posted {
	const { status, problem } = answer ?? { status: 500 };
	if (status < 300) return { status: 'written' };
	if (codeIn(problem) === 'held') return { status: 'held' };
	if (status === 401 || status === 403) return { status: 'sign in' };
	if (status === 429 || status >= 500) return { status: 'no answer' };
	return { status: 'not taken', reason: reasonIn(problem, status) };
}

async function withSentPhotos(
	{ event }: WaitingAct,
	photos: KeptPhotos
): Promise<{ event: ProcessEvent } | Posted> {
	if (!event.photos) return { event };
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

function codeIn(problem: unknown): unknown {
	return typeof problem === 'object' && problem !== null && 'code' in problem ? problem.code : null;
}

/** Why it was not taken: the problem's own words, with the fields it names. */
function reasonIn(problem: unknown, status: number): string {
	if (typeof problem !== 'object' || problem === null) return `The server answered with ${status}.`;
	if (codeIn(problem) === 'conflict') {
		return 'Somebody else entered something on this mold before this came in.';
	}
	const { detail, errors } = problem as Record<string, unknown>;
	const fields = Array.isArray(errors)
		? errors.flatMap((error: unknown) =>
				typeof error === 'object' && error !== null && 'message' in error
					? [String(error.message)]
					: []
			)
		: [];
	const said = String(detail ?? 'The server did not say why.');
	return [said, ...fields.filter((field) => !said.includes(field))].join(' ');
}
