import { setImmediate as turn } from 'node:timers/promises';
import { sql } from 'kysely';
import type { Db } from './database';
import { exclusively, isPostgres } from './dialect';

type Work = (trx: Db) => Promise<unknown>;
interface Waiting {
	work: Work;
	settle: (outcome: Outcome) => void;
}
type Outcome = { ok: true; value: unknown } | { ok: false; error: unknown };

/** As many as one commit may hold up. */
const MOST_AT_ONCE = 64;
/** Works that wait for the next commit; a database without an entry has none ahead. */
const queues = new WeakMap<Db, Waiting[]>();

/**
 * Like `exclusively`, and what arrives at the same moment is committed together: a disk writes ten acts
 * as fast as one. Each work still runs by itself, one after another, and what it throws takes
 * back its own writes alone. It is answered only after the commit. PostgreSQL does the same by itself.
 *
 * @param work - may be run a second time, when another's failed and took back what this one had written
 */
export async function commitTogether<T>(
	db: Db,
	matter: string,
	work: (trx: Db) => Promise<T>
): Promise<T> {
	if (isPostgres(db)) return exclusively(db, matter, work);
	const outcome = await new Promise<Outcome>((settle) => {
		const queue = queues.get(db);
		if (queue) queue.push({ work, settle });
		else void drain(db, [{ work, settle }]);
	});
	if (!outcome.ok) throw outcome.error;
	// `work` made it.
	return outcome.value as T;
}

async function drain(db: Db, queue: Waiting[]): Promise<void> {
	queues.set(db, queue);
	while (queue.length > 0) {
		// SQLite answers at once, so nothing could come to wait: first everything is heard that has arrived by now.
		await turn();
		const batch = queue.splice(0, MOST_AT_ONCE);
		const outcomes = await commit(db, batch).catch((error: unknown) =>
			batch.map((): Outcome => ({ ok: false, error }))
		);
		for (const [index, { settle }] of batch.entries()) {
			settle(outcomes[index] ?? { ok: false, error: new Error('a work without an outcome') });
		}
	}
	queues.delete(db);
}

/** Writes a batch at one stroke; only when something in it fails, each for itself in a second one. */
async function commit(db: Db, batch: readonly Waiting[]): Promise<Outcome[]> {
	try {
		return await db.transaction().execute(async (trx) => {
			const outcomes: Outcome[] = [];
			for (const { work } of batch) outcomes.push({ ok: true, value: await work(trx) });
			return outcomes;
		});
	} catch (error) {
		// Alone it was taken back whole.
		return batch.length === 1 ? [{ ok: false, error }] : commitApart(db, batch);
	}
}

async function commitApart(db: Db, batch: readonly Waiting[]): Promise<Outcome[]> {
	return db.transaction().execute(async (trx) => {
		const outcomes: Outcome[] = [];
		for (const { work } of batch) outcomes.push(await alone(trx, work));
		return outcomes;
	});
}

/** One work within the transaction. Throws when what it wrote cannot be taken back: then nothing of the batch holds. */
async function alone(trx: Db, work: Work): Promise<Outcome> {
	await sql`savepoint work`.execute(trx);
	try {
		const value = await work(trx);
		await sql`release work`.execute(trx);
		return { ok: true, value };
	} catch (error) {
		// A full disk makes SQLite give up the whole transaction; what it said is worth more than what this says.
		await sql`rollback to work`.execute(trx).catch(() => {
			throw error;
		});
		await sql`release work`.execute(trx);
		return { ok: false, error };
	}
}
