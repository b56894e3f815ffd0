import { randomUUID } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import { sql } from 'kysely';
import pg from 'pg';
import { z } from 'zod';
import type { Db } from './database';
import { isPostgres } from './dialect';
import { publishAppended, publishGap, type Appended } from './live';
import { connectionOptions } from './postgres';

const CHANNEL = 'glovewright_appended';
/** Which of the servers on one database said something: what it did itself it has told its screens already. */
const origin = randomUUID();
const wordSchema = z.object({
	jobId: z.string(),
	seq: z.number().int().min(1),
	origin: z.string()
});
const BEAT_MS = 5000;
const SHORTEST_WAIT_MS = 250;
const LONGEST_WAIT_MS = 5000;

/**
 * Tells the other servers on this database of an append. Inside the transaction of the append: they hear
 * of it when it is committed, and only then. Nothing to do for SQLite, which has one server.
 */
export async function announce(trx: Db, appended: Appended): Promise<void> {
	if (!isPostgres(trx)) return;
	const words = JSON.stringify({ ...appended, origin });
	await sql`select pg_notify(${CHANNEL}, ${words})`.execute(trx);
}

/**
 * Hears what other servers on the database at `url` append, and passes it on to the screens of this one. A
 * line that breaks is opened anew, and then every screen looks afresh, since nobody tells twice.
 *
 * @returns what ends it
 */
export function followServers(url: string): () => Promise<void> {
	const over = new AbortController();
	const following = follow(url, over.signal);
	return async () => {
		over.abort();
		await following;
	};
}

async function follow(url: string, over: AbortSignal): Promise<void> {
	let waitMs = SHORTEST_WAIT_MS;
	let wasHeard = false;
	while (!over.aborted) {
		await listen(url, over, () => {
			// The first time there is nothing that could have been missed.
			if (wasHeard) publishGap();
			wasHeard = true;
			waitMs = SHORTEST_WAIT_MS;
		});
		await wait(waitMs, undefined, { signal: over }).catch(() => {});
		waitMs = Math.min(LONGEST_WAIT_MS, waitMs * 2);
	}
}

/** Listens until the line breaks or it is over. Never throws: whoever called tries again. */
async function listen(url: string, over: AbortSignal, onopen: () => void): Promise<void> {
	const client = new pg.Client({ ...connectionOptions(url), query_timeout: BEAT_MS });
	const broken = new AbortController();
	const either = AbortSignal.any([over, broken.signal]);
	client.on('error', () => broken.abort());
	client.on('end', () => broken.abort());
	client.on('notification', ({ payload = '' }) => pass(payload));
	try {
		await client.connect();
		await client.query(`listen ${CHANNEL}`);
		onopen();
		while (!either.aborted) {
			await wait(BEAT_MS, undefined, { signal: either }).catch(() => {});
			// A line that broke without a word is found by asking.
			if (!either.aborted) await client.query('select 1');
		}
	} catch {
		// Said by its consequences: the screens' own lines stay open, and catch up when this one does.
	} finally {
		await client.end().catch(() => {});
	}
}

/** Anybody on the database may say anything on the channel; what is not a word of ours is nothing to us. */
function pass(payload: string): void {
	const said = wordOf(payload);
	if (said && said.origin !== origin) publishAppended({ jobId: said.jobId, seq: said.seq });
}

function wordOf(payload: string): z.infer<typeof wordSchema> | null {
	try {
		return wordSchema.safeParse(JSON.parse(payload)).data ?? null;
	} catch {
		return null;
	}
}
