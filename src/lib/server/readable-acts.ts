import { eventSchema } from '$lib/core/process/events';
import { fieldProblems } from './api';
import type { Append, AppendResult } from './append';
import { isWellFormed } from './well-formed';

type Act = Omit<Append, 'jobId'>;

export interface Readable {
	/** The acts up to the first that is none, as their schema has them. */
	acts: Act[];
	/** What is wrong with that one; null when all can be read. */
	fault: AppendResult | null;
}

/** Reads acts before the store is asked for anything: what is no act is told where, and what would be accepted. */
export function readableActs(sent: readonly Act[]): Readable {
	const acts: Act[] = [];
	for (const act of sent) {
		const parsed = eventSchema.safeParse(act.event);
		if (!parsed.success) {
			const errors = fieldProblems(parsed.error, act.event);
			return { acts, fault: { status: 'unfit', errors } };
		}
		if (!isWellFormed(parsed.data)) {
			const reason = 'A text holds half a character. Type it again.';
			return { acts, fault: { status: 'refused', reason, allowed: [] } };
		}
		acts.push({ ...act, event: parsed.data });
	}
	return { acts, fault: null };
}
