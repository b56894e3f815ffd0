import type { ProcessEvent } from '$lib/core/process/events';

/** An act done while the server was out of reach, kept on this device till the server has taken it. */
export interface WaitingAct {
	/** Goes with it to the server, so that sent twice it is one act. */
	id: string;
	jobId: string;
	/** The mold's name, for the list of what waits. */
	title: string;
	/** The place in the log it was made for. */
	seq: number;
	/** With who did it and when. */
	event: ProcessEvent;
	byName: string;
	/** What the button said. */
	label: string;
	/** Why the server did not take it; null while it only waits for its turn. */
	refusal: string | null;
}

/** Where waiting acts are kept; the same on every tab of this device. */
export interface ActStore {
	/** All of them, each job's in the order in which they were done. */
	all(): Promise<WaitingAct[]>;
	put(act: WaitingAct): Promise<void>;
	drop(id: string): Promise<void>;
}

/** In the order in which they were done: mold by mold, number by number. */
export function inOrder(acts: readonly WaitingAct[]): WaitingAct[] {
	return [...acts].sort(
		(a, b) =>
			(a.jobId < b.jobId ? -1 : a.jobId > b.jobId ? 1 : a.seq - b.seq) ||
			Date.parse(a.event.at) - Date.parse(b.event.at)
	);
}
