import type { StoredEvent } from '$lib/core/log/chain';
import type { ProcessEvent } from '$lib/core/process/events';
import type { KeptDatabase } from './kept-database';
import type { KeptJob } from './kept-job';

async function json<T>(address: string): Promise<T | null> {
	try {
		const answer = await fetch(address, { cache: 'no-store' });
		return answer.ok ? ((await answer.json()) as T) : null;
	} catch {
		return null;
	}
}

/** Whether the server answers at this moment. */
export async function serverAnswers(): Promise<boolean> {
	return (await json('/healthz')) !== null;
}

/**
 * Brings what this device keeps of a mold up to what the server has, and gives it; as it is kept when
 * no answer comes, null when nothing is kept either.
 */
export async function keptUpToDate(db: KeptDatabase, jobId: string): Promise<KeptJob | null> {
	const kept = await db.get('jobs', jobId);
	const fresh = kept ? await grown(kept) : await json<KeptJob>(`/jobs/${jobId}/bench/kept`);
	if (fresh && fresh !== kept) await db.put('jobs', fresh);
	return fresh ?? kept ?? null;
}

async function grown(kept: KeptJob): Promise<KeptJob | null> {
	const news = await json<{ events: StoredEvent<ProcessEvent>[] }>(
		`/api/jobs/${kept.jobId}/events?after=${kept.log.length}`
	);
	if (!news) return null;
	if (news.events.length === 0) return kept;
	// A log that does not go on from here was restored from a backup: all of it anew.
	const follows = news.events[0]?.prevHash === kept.log.at(-1)?.hash;
	return follows
		? { ...kept, log: [...kept.log, ...news.events] }
		: json<KeptJob>(`/jobs/${kept.jobId}/bench/kept`);
}
