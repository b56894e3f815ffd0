import { expect, test } from 'vitest';
import { sql } from 'kysely';
import { takeRound, type Taking } from '../../src/lib/server/training/take-round';
import { drawRound } from '../../src/lib/core/training/round';
import type { ProcessEvent } from '../../src/lib/core/process/events';
import { appendEvent } from '../../src/lib/server/append';
import { pools } from '../../src/lib/server/content';
import type { Db } from '../../src/lib/server/database';
import { createJob } from '../../src/lib/server/jobs.repository';
import { addPerson } from '../../src/lib/server/people.repository';
import { getShop, saveShop } from '../../src/lib/server/shop.repository';
import {
	answersOf,
	expiriesOf,
	insertRound,
	recordsOf
} from '../../src/lib/server/training/training.repository';
import { testInputs } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';
import { actsOf, AT, CREW } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const pool = pools.get('isocyanate');
if (!pool) throw new Error('no pool');
const later = (s: number) => new Date(Date.parse(AT) + s * 1000).toISOString();

async function somebody(db: Db, name = 'Ben Marsh') {
	return (await addPerson(db, { name, role: 'mold maker', pin: '13571357' }, AT)).id;
}

/** A round as a page posts it: drawn, then answered by `pick`. */
async function round(
	db: Db,
	personId: string | null,
	given: { id: string; at: string; pick?: (right: number, i: number) => number | null }
) {
	const answers = personId ? await answersOf(db, { personId, kind: 'isocyanate' }) : [];
	const drawn = drawRound(pool!, { answers, at: given.at, seed: given.id });
	const taking: Taking = {
		pool: pool!,
		personId,
		round: given.id,
		drawnAt: given.at,
		ids: drawn.map(({ id }) => id).join(' '),
		at: given.at,
		chosen: (questions) =>
			questions.map(({ right }, i) => (given.pick ? given.pick(right, i) : right))
	};
	return { taking, marked: await takeRound(db, taking) };
}

test('all right gives a record for five years; one missed gives none, and comes again first', async () => {
	const db = await testStore();
	const personId = await somebody(db);
	const failed = await round(db, personId, {
		id: 'round-1',
		at: AT,
		pick: (right, i) => (i === 2 ? null : right)
	});
	expect(failed.marked).toMatchObject({ right: 5, isPassed: false, expiresAt: null });
	expect(await recordsOf(db, personId)).toEqual([]);
	const missed = failed.taking.ids.split(' ')[2];

	const passed = await round(db, personId, { id: 'round-2', at: later(60) });
	expect(passed.taking.ids.split(' ')[0]).toBe(missed);
	expect(passed.marked).toMatchObject({ isPassed: true });
	expect(await recordsOf(db, personId)).toEqual([
		{ kind: 'isocyanate', passedAt: later(60), expiresAt: '2031-03-02T14:01:00.000Z' }
	]);
	expect(await answersOf(db, { personId })).toHaveLength(12);
});

test('the same round sent twice is kept once', async () => {
	const db = await testStore();
	const personId = await somebody(db);
	const { taking, marked } = await round(db, personId, { id: 'round-1', at: AT });
	expect(await takeRound(db, taking)).toEqual(marked);
	expect(await answersOf(db, { personId })).toHaveLength(6);
});

test('a round that was drawn before another one was answered is not marked', async () => {
	const db = await testStore();
	const personId = await somebody(db);
	const before = drawRound(pool!, { answers: [], at: AT, seed: 'old' });
	await round(db, personId, { id: 'round-1', at: AT, pick: () => null });
	const ids = before.map(({ id }) => id).join(' ');
	const { taking } = await round(db, personId, { id: 'round-2', at: later(5) });
	const stale = { ...taking, round: 'old', drawnAt: AT, ids };
	expect(await takeRound(db, stale)).toBe('another round');
});

test('a visitor is marked, and nothing is kept', async () => {
	const db = await testStore();
	const { marked } = await round(db, null, { id: 'round-1', at: AT });
	expect(marked).toMatchObject({ isPassed: true, expiresAt: null });
	const rows = await db.selectFrom('training_answer').selectAll().execute();
	expect(rows).toEqual([]);
});

test.each(['training_answer', 'training_record'])('rows of %s are never changed', async (table) => {
	const db = await testStore();
	const personId = await somebody(db);
	await round(db, personId, { id: 'round-1', at: AT });
	await expect(sql.raw(`update ${table} set kind = 'knife'`).execute(db)).rejects.toThrow(
		'written once'
	);
	await expect(sql.raw(`delete from ${table}`).execute(db)).rejects.toThrow('written once');
});

/** A mold at its briefing, everything read, in a shop that asks for training or does not. */
async function atTheBriefing(asksTraining: boolean) {
	const db = await testStore();
	await saveShop(db, { ...testInputs().shop, ...(asksTraining ? { asksTraining } : {}) });
	const plan = handPlan();
	const jobId = 'job-00001';
	await createJob(db, { id: jobId, plan, by: CREW.supervisor, at: AT, content: {} });
	const acts = actsOf(plan, jobId, 'frame');
	const end = acts.findIndex(({ event }) => event.type === 'brief.finished');
	const post = ({ id, seq, event }: (typeof acts)[number], change: Partial<ProcessEvent> = {}) =>
		appendEvent(db, {
			jobId,
			id,
			seq,
			event: { ...event, ...change } as ProcessEvent,
			recordedAt: event.at
		});
	for (const act of acts.slice(0, end)) expect((await post(act)).status).toBe('appended');
	const finish = acts[end];
	if (!finish) throw new Error('no briefing to finish');
	return { db, finish, post };
}

/** Gives the rehearsed worker, who is nobody of a store, a name in it and a training. */
async function train(db: Db, expiresAt: string) {
	await db
		.insertInto('person')
		.values({
			id: CREW.worker,
			name: 'Ben Marsh',
			role: 'mold maker',
			pin_hash: '',
			retired: 0,
			added_at: AT,
			pin_given_by: null,
			pin_set_at: null
		})
		.execute();
	await insertRound(db, {
		round: 'round-1',
		personId: CREW.worker,
		kind: 'isocyanate',
		at: AT,
		textHash: pool!.hash,
		answers: [{ question: 'smell', isRight: true }],
		expiresAt
	});
}

test('a shop that asks for training in date takes no briefing without, and says what to do', async () => {
	const { finish, post } = await atTheBriefing(true);
	const answer = await post(finish);
	expect(answer).toMatchObject({ status: 'refused' });
	expect('reason' in answer && answer.reason).toContain('no training on isocyanates on record');
	expect('reason' in answer && answer.reason).toContain('Refresher');
});

test('in date it is taken, run out it is not, by the time of the act', async () => {
	const inDate = await atTheBriefing(true);
	await train(inDate.db, later(10 * 86_400));
	expect(await post2(inDate)).toBe('appended');
	expect(await expiriesOf(inDate.db, 'isocyanate')).toEqual({ [CREW.worker]: later(10 * 86_400) });
	const over = await atTheBriefing(true);
	await train(over.db, over.finish.event.at);
	expect(await post2(over)).toBe('refused');
});

const post2 = async ({ finish, post }: Awaited<ReturnType<typeof atTheBriefing>>) =>
	(await post(finish)).status;

test('a shop that does not ask takes it, as shops made before do', async () => {
	const asked = await atTheBriefing(false);
	expect((await getShop(asked.db))?.asksTraining).toBeUndefined();
	expect(await post2(asked)).toBe('appended');
});
