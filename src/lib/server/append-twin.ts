import { canonicalJson } from '$lib/core/log/canonical';
import type { ProcessEvent } from '$lib/core/process/events';
import { allowedTypes } from '$lib/core/process/refusal';
import type { Append, AppendResult } from './append';
import type { Db } from './database';
import type { JobFile } from './job-file';

/** Whoever was away for longer reads the log from its own number on. */
const MOST_TOLD = 100;
export const refused = (reason: string, allowed: string[] = []): AppendResult => ({
	status: 'refused',
	reason,
	allowed
});

/** What to answer an act whose place is taken, or not yet there. */
export function conflictWith(job: JobFile, seq: number): AppendResult {
	const { headSeq, log, state } = job;
	const since = log.slice(seq - 1).slice(0, MOST_TOLD);
	return { status: 'conflict', headSeq, since, allowed: allowedTypes(state) };
}

/** What to answer when this job has an act under the id already. */
export function twinOf(job: JobFile, { id, seq, event }: Append): AppendResult | null {
	// Looked for from the end: what is sent twice was sent a moment ago.
	const stored = job.log.findLast((s) => s.id === id);
	if (!stored) return null;
	if (isSameAct(stored.event, event)) return { status: 'duplicate', stored };
	// Typed anew after an answer that was lost: whoever sent it must see what stands already.
	return seq === stored.seq
		? conflictWith(job, seq)
		: refused(`The id ${id} belongs to another act of this job. Send this one under a new id.`);
}

/** What to answer when another job has an act under the id. */
export async function foreignTwin(trx: Db, id: string): Promise<AppendResult | null> {
	const other = await trx.selectFrom('event').select('id').where('id', '=', id).executeTakeFirst();
	return other ? refused(`The id ${id} belongs to an act of another job.`) : null;
}

/** Sent again it may carry other times, and not what the server adds; anything else that differs was typed anew. */
function isSameAct(stored: ProcessEvent, sent: ProcessEvent): boolean {
	const untimed = (event: ProcessEvent) =>
		canonicalJson({ ...event, at: '', sentAt: '', notInDate: true });
	return untimed(stored) === untimed(sent);
}
