import { advance, fold, type JobState } from '$lib/core/process/job';
import type { KeptJob } from './kept-job';
import type { WaitingAct } from './waiting-act';

/** A mold as the kept log and the acts that wait on this device leave it. */
export interface FoldedJob {
	state: JobState;
	headSeq: number;
}

/**
 * Folds a kept log and then what waits, by the same machine as the server.
 *
 * Acts that the log has already, and those that no longer fit on it, are left out: the server's
 * answer decides over both.
 *
 * @throws Error when the kept log itself does not fold
 */
export function foldWaiting(kept: KeptJob, waiting: readonly WaitingAct[]): FoldedJob {
	let state = fold(kept.plan, kept.log);
	let headSeq = kept.log.length;
	const written = new Set(kept.log.map(({ id }) => id));
	for (const { id, seq, event, refusal } of waiting) {
		if (refusal !== null || written.has(id)) continue;
		if (seq !== headSeq + 1) break;
		const step = advance(state, { id, seq, event });
		if (!step.ok) break;
		({ state } = step);
		headSeq = seq;
	}
	return { state, headSeq };
}
