import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { verifyChain } from '../../src/lib/core/log/chain';
import { eventSchema, type ProcessEvent } from '../../src/lib/core/process/events';
import { addSeconds } from '../../src/lib/core/process/instant';
import { advance, fold } from '../../src/lib/core/process/job';
import { allowedTypes } from '../../src/lib/core/process/refusal';
import { foldWaiting } from '../../src/lib/device/keep/fold-waiting';
import { keptActs } from '../../src/lib/device/keep/kept-acts';
import { openKept } from '../../src/lib/device/keep/kept-database';
import type { KeptJob } from '../../src/lib/device/keep/kept-job';
import { sendWaiting, type Posted } from '../../src/lib/device/keep/send-waiting';
import type { ActStore, WaitingAct } from '../../src/lib/device/keep/waiting-act';
import { appendEvents, type AppendResult, type Held } from '../../src/lib/server/append';
import { openDatabase, type Db } from '../../src/lib/server/database';
import { migrate } from '../../src/lib/server/migrate';
import { getJob } from '../../src/lib/server/jobs.repository';
import { AT, CREW, storedJob } from '../fixtures/server-store';

/** Acts that need no more than themselves, as a chance person may press them. */
const SIMPLE: ProcessEvent[] = [
	{ type: 'cup.weighed', massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } },
	{ type: 'cup.mixed' },
	{ type: 'cup.applied' },
	{ type: 'coat.finished' },
	{ type: 'job.paused', reason: 'Lunch' },
	{ type: 'job.resumed' },
	{ type: 'job.takenOver' },
	{ type: 'room.read', temperatureC: 22, humidityPct: 45, extractionOn: true }
].map((event) => eventSchema.parse({ ...event, at: '2026-03-02T14:00:00Z', by: CREW.worker }));

interface Device {
	store: ActStore;
	kept: KeptJob;
	done: string[];
}

/** A device of its own, with a database of its own, that has just heard all of this job. */
async function device(db: Db, jobId: string): Promise<Device> {
	globalThis.indexedDB = new IDBFactory();
	const store = keptActs(await openKept());
	const job = await getJob(db, jobId);
	if (!job) throw new Error('no job');
	const { plan, planHash, log } = job;
	const rest = { names: {}, zone: 'UTC', system: 'SI' } as const;
	const texts = { lang: 'en' as const, steps: {}, briefings: {}, troubles: {} };
	const heard = { version: 'test', heardAt: AT };
	return { store, kept: { jobId, plan, planHash, log, ...rest, ...heard, texts }, done: [] };
}

/** Does what chance chooses among what the machine takes, and keeps it on the device. */
async function act({ store, kept, done }: Device, choice: number, id: string): Promise<void> {
	const { state, headSeq } = foldWaiting(kept, await store.all());
	const at = addSeconds(state.lastAt, 60);
	const events = SIMPLE.filter(({ type }) => allowedTypes(state).includes(type))
		.map((event) => ({ ...event, at }))
		.filter((event) => advance(state, { id, seq: headSeq + 1, event }).ok);
	const event = events[choice % events.length];
	if (!event) return;
	const { jobId } = kept;
	await store.put({
		id,
		jobId,
		title: 'A mold',
		seq: headSeq + 1,
		event,
		byName: 'Ben',
		label: event.type,
		refusal: null
	});
	done.push(id);
}

/** As the server answers, without the wire; every fourth answer is lost on the way back. */
function wire(db: Db) {
	let posts = 0;
	return async (acts: readonly WaitingAct[]): Promise<Posted[]> => {
		const jobIds = [...new Set(acts.map(({ jobId }) => jobId))];
		const posted = new Map<string, Posted>();
		for (const jobId of jobIds) {
			const own = acts.filter((act) => act.jobId === jobId);
			const sent = own.map(({ id, seq, event }) => ({ id, seq, event, recordedAt: event.at }));
			for (const [index, result] of (await appendEvents(db, jobId, sent)).entries()) {
				posted.set(own[index]?.id ?? '', postedOf(result));
			}
		}
		posts += 1;
		return acts.map(({ id }) =>
			posts % 4 === 0 ? { status: 'no answer' } : (posted.get(id) ?? { status: 'held' })
		);
	};
}

function postedOf(result: AppendResult | Held): Posted {
	if (result.status === 'held') return result;
	if (result.status === 'appended' || result.status === 'duplicate') return { status: 'written' };
	return {
		status: 'not taken',
		reason: result.status === 'refused' ? result.reason : result.status
	};
}

describe('three devices without a line, back in any order', () => {
	test('every act is in the log once, or waits on its device with a reason; all see one log', async () => {
		const acts = fc.array(fc.nat({ max: 20 }), { maxLength: 6 });
		const order = fc.shuffledSubarray([0, 1, 2], { minLength: 3 });
		let count = 0;
		let written = 0;
		let waiting = 0;
		await fc.assert(
			fc.asyncProperty(fc.tuple(acts, acts, acts), order, async (choices, backInOrder) => {
				count += 1;
				const db = openDatabase(':memory:');
				await migrate(db, AT);
				const { jobId } = await storedJob(db, 'build', `job-away-${count}`);
				const devices: Device[] = [];
				for (const [d, chosen] of choices.entries()) {
					const made = await device(db, jobId);
					devices.push(made);
					for (const [i, choice] of chosen.entries())
						await act(made, choice, `${count}-${d}-act-${i}`);
				}
				const post = wire(db);
				for (const d of backInOrder) {
					const { store } = devices[d]!;
					for (let tries = 0; tries < 12; tries++) {
						const { stoppedBy } = await sendWaiting(store, post, CREW.worker);
						if (stoppedBy === null) break;
					}
				}
				const job = await getJob(db, jobId);
				if (!job) throw new Error('no job');
				expect(verifyChain(job.log)).toMatchObject({ ok: true });
				expect(fold(job.plan, job.log).snapshot.value).toEqual(job.state.snapshot.value);
				const ids = job.log.map(({ id }) => id);
				for (const { store, done } of devices) {
					const left = await store.all();
					for (const { refusal } of left) expect(refusal).toMatch(/\S/);
					for (const id of done) {
						const places = [...ids, ...left.map((act) => act.id)].filter((known) => known === id);
						expect(places).toEqual([id]);
					}
					written += done.length - left.length;
					waiting += left.length;
				}
				await db.destroy();
			}),
			{ numRuns: 20 }
		);
		// Both happened, so that the property has judged both.
		expect(written).toBeGreaterThan(0);
		expect(waiting).toBeGreaterThan(0);
	});
});

test('acts of somebody else go on waiting, and so does what follows them on the same mold', async () => {
	globalThis.indexedDB = new IDBFactory();
	const store = keptActs(await openKept());
	const base = { title: 'A mold', byName: '', label: '', refusal: null };
	const at = '2026-03-02T14:00:00Z';
	const put = (jobId: string, seq: number, by: string) =>
		store.put({ ...base, id: `${jobId}-${seq}`, jobId, seq, event: { type: 'cup.mixed', at, by } });
	await put('a', 5, 'leilani');
	await put('a', 6, 'yusuf');
	await put('b', 3, 'yusuf');
	const posted: string[] = [];
	const sent = await sendWaiting(
		store,
		async (acts) => {
			posted.push(...acts.map(({ id }) => id));
			return acts.map(() => ({ status: 'written' }));
		},
		'yusuf'
	);
	expect(sent).toEqual({ written: 1, needLook: 0, stoppedBy: 'sign in' });
	expect(posted).toEqual(['b-3']);
	expect((await store.all()).map(({ id, refusal }) => [id, refusal])).toEqual([
		['a-5', null],
		['a-6', null]
	]);
});

describe('acts sent together', () => {
	const at = '2026-03-02T14:00:00Z';
	const base = { title: 'A mold', byName: '', label: '', refusal: null };
	async function storeOf(...places: Array<[jobId: string, seq: number]>): Promise<ActStore> {
		globalThis.indexedDB = new IDBFactory();
		const store = keptActs(await openKept());
		for (const [jobId, seq] of places) {
			const event = { type: 'cup.mixed' as const, at, by: 'yusuf' };
			await store.put({ ...base, id: `${jobId}-${seq}`, jobId, seq, event });
		}
		return store;
	}
	const left = async (store: ActStore) =>
		(await store.all()).map(({ id, refusal }) => [id, refusal]);

	test('what follows one that is not taken needs a look, other molds go on', async () => {
		const store = await storeOf(['a', 5], ['a', 6], ['b', 3]);
		const post = async (acts: readonly WaitingAct[]) =>
			acts.map(({ id }): Posted =>
				id === 'a-5'
					? { status: 'not taken', reason: 'The window shut.' }
					: id === 'a-6'
						? { status: 'held' }
						: { status: 'written' }
			);
		expect(await sendWaiting(store, post, 'yusuf')).toEqual({
			written: 1,
			needLook: 2,
			stoppedBy: null
		});
		expect(await left(store)).toEqual([
			['a-5', 'The window shut.'],
			['a-6', expect.stringMatching(/after an entry that was not taken/)]
		]);
	});

	test('many go in several requests, and after one that got no answer the mold is left alone', async () => {
		const places = Array.from({ length: 45 }, (_, n): [string, number] => ['a', n + 2]);
		const store = await storeOf(...places, ['b', 3]);
		const sizes: number[] = [];
		const post = async (acts: readonly WaitingAct[]) => {
			sizes.push(acts.length);
			return acts.map(({ id }): Posted => ({ status: id === 'a-31' ? 'no answer' : 'written' }));
		};
		const sent = await sendWaiting(store, post, 'yusuf');
		expect(sent).toMatchObject({ needLook: 0, stoppedBy: 'no answer' });
		expect(sizes).toEqual([20, 20, 1]);
		expect((await left(store)).map(([id]) => id)).not.toContain('b-3');
		expect((await store.all()).every(({ refusal }) => refusal === null)).toBe(true);
	});

	test('a line that is dead is waited for once; what followed a refusal is still marked', async () => {
		const places = Array.from({ length: 45 }, (_, n): [string, number] => ['b', n + 2]);
		const store = await storeOf(...places, ['a', 5], ['c', 3]);
		let posts = 0;
		const post = async (acts: readonly WaitingAct[]) => {
			posts += 1;
			return acts.map(({ id }): Posted => {
				if (id === 'a-5') return { status: 'written' };
				if (id === 'b-2') return { status: 'not taken', reason: 'The window shut.' };
				return { status: id === 'b-3' ? 'held' : 'no line' };
			});
		};
		const sent = await sendWaiting(store, post, 'yusuf');
		expect(posts).toBe(1);
		expect(sent).toEqual({ written: 1, needLook: 45, stoppedBy: 'no answer' });
		expect((await store.all()).filter(({ refusal }) => refusal === null)).toMatchObject([
			{ id: 'c-3' }
		]);
	});

	test('too few answers count as none', async () => {
		const store = await storeOf(['a', 5], ['b', 3]);
		expect(await sendWaiting(store, async () => [], 'yusuf')).toEqual({
			written: 0,
			needLook: 0,
			stoppedBy: 'no answer'
		});
		expect(await store.all()).toHaveLength(2);
	});
});
