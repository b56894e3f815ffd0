import { version } from '$app/environment';
import type { Lang } from '$lib/core/language/locale';
import type { StoredEvent } from '$lib/core/log/chain';
import type { ProcessEvent } from '$lib/core/process/events';
import { secondsBetween } from '$lib/core/process/instant';
import { expiryIn } from '$lib/core/training/asked-training';
import { isInDate } from '$lib/core/training/training';
import type { KeptDatabase } from './kept-database';
import { LONGEST_AWAY_S, type KeptJob } from './kept-job';
import { pagesCache } from './pages-cache';

/** A line that is up and leads nowhere answers nothing for minutes. */
const LONGEST_MS = 30_000;

async function json<T>(address: string, signal?: AbortSignal): Promise<T | null> {
	const late = new AbortController();
	const timer = setTimeout(() => late.abort(), LONGEST_MS);
	const leave = () => late.abort();
	signal?.addEventListener('abort', leave);
	try {
		if (signal?.aborted) return null;
		const answer = await fetch(address, { cache: 'no-store', signal: late.signal });
		return answer.ok ? ((await answer.json()) as T) : null;
	} catch {
		return null;
	} finally {
		clearTimeout(timer);
		signal?.removeEventListener('abort', leave);
	}
}

/**
 * Brings what this device keeps of a mold up to what the server has, and gives it; as it is kept when
 * no answer comes, null when nothing is kept either.
 */
export async function keptUpToDate(
	db: KeptDatabase,
	{
		jobId,
		lang,
		viewerId,
		at,
		signal
	}: {
		jobId: string;
		lang: Lang;
		viewerId: string;
		at: string;
		signal?: AbortSignal | undefined;
	}
): Promise<KeptJob | null> {
	const kept = await db.get('jobs', jobId);
	// Names and texts change seldom, half a day is often enough; who is kept from work may pass at any time.
	const isFresh =
		kept?.version === version &&
		kept.texts.lang === lang &&
		secondsBetween(kept.wholeAt ?? '', at) < LONGEST_AWAY_S &&
		(!kept.training || isInDate(expiryIn(kept.training, viewerId), at));
	const found = kept && isFresh ? await grown(kept, signal) : await whole(jobId, signal);
	const wholeAt = isFresh ? (kept.wholeAt ?? at) : at;
	const fresh = found && { ...found, version, heardAt: at, wholeAt };
	// Whoever signed out meanwhile has had what was kept cleared away.
	if (signal?.aborted) return kept ?? null;
	if (fresh) await db.put('jobs', fresh);
	return fresh ?? kept ?? null;
}

const whole = (jobId: string, signal?: AbortSignal) =>
	json<KeptJob>(`/jobs/${jobId}/bench/kept`, signal);

async function grown(kept: KeptJob, signal?: AbortSignal): Promise<KeptJob | null> {
	const { length } = kept.log;
	const news = await json<{ headSeq: number; events: StoredEvent<ProcessEvent>[] }>(
		`/api/jobs/${kept.jobId}/events?after=${Math.max(0, length - 1)}`,
		signal
	);
	if (!news) return null;
	// A log that does not go on from here was restored from a backup: all of it anew.
	const [last, ...rest] = news.events;
	if (last?.hash !== kept.log.at(-1)?.hash) return whole(kept.jobId, signal);
	return { ...kept, log: [...kept.log, ...rest] };
}

/** Keeps the bench itself, also when it was reached without loading a page. */
export async function keepBenchPage(jobId: string, signal: AbortSignal): Promise<void> {
	if (signal.aborted || !('caches' in window)) return;
	const path = `/jobs/${jobId}/bench`;
	const page = await fetch(path, { headers: { accept: 'text/html' }, signal }).catch(() => null);
	if (page?.ok && !page.redirected) await (await caches.open(pagesCache(version))).put(path, page);
}
