import { setTimeout as wait } from 'node:timers/promises';
import { sql } from 'kysely';
import { expect, onTestFinished, test, vi } from 'vitest';
import { appendEvent } from '../../src/lib/server/append';
import type { Db } from '../../src/lib/server/database';
import { createJob } from '../../src/lib/server/jobs.repository';
import { onAppended, onGap, type Appended } from '../../src/lib/server/live';
import { announce, followServers } from '../../src/lib/server/live-servers';
import { openPostgresStore } from '../../src/lib/server/postgres-start';
import { handPlan } from '../fixtures/plan';
import { newDatabase } from '../fixtures/postgres-database';
import { actsOf, AT, CREW } from '../fixtures/server-store';

const jobId = 'job-00001';

async function followed() {
	const url = await newDatabase();
	const db = await openPostgresStore(url);
	const end = followServers(url);
	const heard: Appended[] = [];
	const gaps: string[] = [];
	const offs = [onAppended((word) => heard.push(word)), onGap(() => gaps.push('gap'))];
	onTestFinished(async () => {
		for (const off of offs) off();
		await end();
		await db.destroy();
	});
	await vi.waitFor(async () => expect(await listeners(db)).toBe(1), 10_000);
	return { db, heard, gaps };
}

async function listeners(db: Db): Promise<number> {
	// While it is still being carried out, nobody listens yet.
	const { rows } = await sql<{ n: number }>`select count(*) as n from pg_stat_activity
		where datname = current_database() and state = 'idle' and query in ('listen glovewright_appended', 'select 1')`.execute(
		db
	);
	return rows[0]?.n ?? 0;
}

/** What another server would say. */
const elsewhere = (db: Db, seq: number) =>
	sql`select pg_notify('glovewright_appended', ${JSON.stringify({ jobId, seq, origin: 'elsewhere' })})`.execute(
		db
	);

test('what another server appends is heard here within a second', async () => {
	const { db, heard } = await followed();
	await elsewhere(db, 2);
	await vi.waitFor(() => expect(heard).toEqual([{ jobId, seq: 2 }]), 1000);
});

test('a server says its own appends once, and those that were rolled back never', async () => {
	const { db, heard } = await followed();
	const plan = handPlan();
	await createJob(db, { id: jobId, plan, by: CREW.supervisor, at: AT, content: {} });
	const [act] = actsOf(plan, jobId, 'pattern');
	if (!act) throw new Error('no act');
	await appendEvent(db, { jobId, ...act, recordedAt: act.event.at });
	const broken = db.transaction().execute(async (trx) => {
		await announce(trx, { jobId, seq: 99 });
		throw new Error('the transaction is called off');
	});
	await expect(broken).rejects.toThrow('called off');
	// Whatever was said before this word has come before it.
	await elsewhere(db, 3);
	await vi.waitFor(() => expect(heard.at(-1)).toEqual({ jobId, seq: 3 }), 10_000);
	expect(heard.map(({ seq }) => seq)).toEqual([1, 2, 3]);
});

test('words on the channel that are none of ours end nothing and are passed over', async () => {
	const { db, heard, gaps } = await followed();
	const strange = ['', '{', 'null', '[]', '7', '{"jobId":7,"seq":"2"}', '{"jobId":"j","seq":1.5}'];
	for (const words of strange) {
		await sql`select pg_notify('glovewright_appended', ${words})`.execute(db);
	}
	await elsewhere(db, 2);
	await vi.waitFor(() => expect(heard).toEqual([{ jobId, seq: 2 }]), 10_000);
	expect(gaps).toEqual([]);
});

test('a listening line that breaks is opened anew, and then every screen looks afresh', async () => {
	const { db, heard, gaps } = await followed();
	const cut = sql`select pg_terminate_backend(pid) from pg_stat_activity
		where datname = current_database() and query in ('listen glovewright_appended', 'select 1')`;
	await cut.execute(db);
	await elsewhere(db, 2);
	await vi.waitFor(() => expect(gaps).toEqual(['gap']), 10_000);
	await elsewhere(db, 3);
	await vi.waitFor(() => expect(heard.at(-1)).toEqual({ jobId, seq: 3 }), 10_000);
	await wait(50);
	expect(gaps).toHaveLength(1);
});
