import { newActId } from '../../src/lib/server/act-id';
import { describe, expect, test } from 'vitest';
import { sql } from 'kysely';
import { dueRoundId } from '../../src/lib/server/training/due-round';
import { takeRound, type Taking } from '../../src/lib/server/training/take-round';
import { drawRound } from '../../src/lib/core/training/round';
import type { EventType, ProcessEvent } from '../../src/lib/core/process/events';
import { askedTraining } from '../../src/lib/server/training/asked-training';
import { appendEvent } from '../../src/lib/server/append';
import { actFromForm } from '../../src/lib/server/bench-act';
import { loadWords } from '../../src/lib/core/language/load-words';
import { contextOf } from '../../src/lib/core/process/job';
import { jobOrError } from '../../src/lib/server/job-or-error';
import { BenchLog, MAKER } from '../fixtures/bench-log';
import { pools } from '../../src/lib/server/content';
import type { Db } from '../../src/lib/server/database';
import { createJob } from '../../src/lib/server/jobs.repository';
import { addPerson } from '../../src/lib/server/people.repository';
import { getShop, saveShop } from '../../src/lib/server/shop.repository';
import {
	answersOf,
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
	{ at, pick }: { at: string; pick?: (right: number, i: number) => number | null }
) {
	const before = personId ? await answersOf(db, { personId, kind: 'isocyanate' }) : [];
	const id = personId ? dueRoundId({ personId, kind: 'isocyanate', before }) : 'visitor';
	const drawn = drawRound(pool!, { answers: before, at, seed: id });
	const taking: Taking = {
		pool: pool!,
		personId,
		round: id,
		drawnAt: at,
		ids: drawn.map((question) => question.id).join(' '),
		at,
		chosen: (questions) => questions.map(({ right }, i) => (pick ? pick(right, i) : right))
	};
	return { taking, marked: await takeRound(db, taking) };
}

test('all right gives a record for five years; one missed gives none, and comes again first', async () => {
	const db = await testStore();
	const personId = await somebody(db);
	const failed = await round(db, personId, {
		at: AT,
		pick: (right, i) => (i === 2 ? null : right)
	});
	expect(failed.marked).toMatchObject({ right: 5, isPassed: false, expiresAt: null });
	expect(await recordsOf(db, personId)).toEqual([]);
	const missed = failed.taking.ids.split(' ')[2];

	const passed = await round(db, personId, { at: later(60) });
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
	const { taking, marked } = await round(db, personId, { at: AT });
	expect(await takeRound(db, taking)).toEqual(marked);
	expect(await answersOf(db, { personId })).toHaveLength(6);
});

test('sent again with other answers, it is not marked by them', async () => {
	const db = await testStore();
	const personId = await somebody(db);
	const { taking } = await round(db, personId, { at: AT, pick: (right, i) => (i ? right : null) });
	const allRight = (questions: readonly { right: number }[]) => questions.map(({ right }) => right);
	expect(await takeRound(db, { ...taking, at: later(60), chosen: allRight })).toBe('another round');
	expect(await recordsOf(db, personId)).toEqual([]);
});

test('sent again later, a passed round counts till when it did', async () => {
	const db = await testStore();
	const personId = await somebody(db);
	const { taking } = await round(db, personId, { at: AT });
	const again = await takeRound(db, { ...taking, at: later(3600) });
	expect(again).toMatchObject({ isPassed: true, expiresAt: '2031-03-02T14:00:00.000Z' });
	expect(await takeRound(db, { ...taking, at: later(18 * 30 * 86_400) })).toBe('another round');
});

test('a round that was drawn before another one was answered is not marked', async () => {
	const db = await testStore();
	const personId = await somebody(db);
	const { taking } = await round(db, personId, { at: AT });
	await round(db, personId, { at: later(5) });
	expect(await takeRound(db, { ...taking, at: later(6) })).toBe('another round');
});

describe('what a sender claims of a round', () => {
	/** A round after one that was missed, as the page would send it, and as a sender may alter it. */
	async function altered(change: { drawnAt?: string; round?: string; at?: string }) {
		const db = await testStore();
		const personId = await somebody(db);
		await round(db, personId, { at: AT, pick: () => null });
		const before = await answersOf(db, { personId, kind: 'isocyanate' });
		const claimed = {
			round: dueRoundId({ personId, kind: 'isocyanate', before }),
			drawnAt: later(60),
			at: later(120),
			...change
		};
		const { round: seed, drawnAt } = claimed;
		const drawn = drawRound(pool!, { answers: before, at: drawnAt, seed });
		const marked = await takeRound(db, {
			pool: pool!,
			personId,
			...claimed,
			ids: drawn.map(({ id }) => id).join(' '),
			chosen: (questions) => questions.map(({ right }) => right)
		});
		return { marked, records: await recordsOf(db, personId) };
	}

	test('is taken as the page drew it', async () => {
		expect((await altered({})).records).toHaveLength(1);
	});

	test.each([
		['drawn before the misses, so that they are left out', { drawnAt: '2000-01-01T00:00:00.000Z' }],
		['drawn a second before the misses', { drawnAt: later(-1) }],
		['drawn later than it is sent', { drawnAt: later(121) }],
		['drawn a day ago', { at: later(60 + 86_400) }],
		['by a seed of the sender’s choice', { round: '6f2c8f2e-8a51-4d0e-9a57-0d6f6f3b2a11' }]
	])('is not marked: %s', async (_, change) => {
		expect(await altered(change)).toEqual({ marked: 'another round', records: [] });
	});
});

test('a visitor is marked, and nothing is kept', async () => {
	const db = await testStore();
	const { marked } = await round(db, null, { at: AT });
	expect(marked).toMatchObject({ isPassed: true, expiresAt: null });
	const rows = await db.selectFrom('training_answer').selectAll().execute();
	expect(rows).toEqual([]);
});

test.each(['training_answer', 'training_record'])('rows of %s are never changed', async (table) => {
	const db = await testStore();
	const personId = await somebody(db);
	await round(db, personId, { at: AT });
	await expect(sql.raw(`update ${table} set kind = 'knife'`).execute(db)).rejects.toThrow(
		'written once'
	);
	await expect(sql.raw(`delete from ${table}`).execute(db)).rejects.toThrow('written once');
});

/** A mold just before its first act of this type, in a shop that asks for training or does not. */
async function beforeThe(type: EventType, asksTraining: boolean) {
	const db = await testStore();
	const { shop } = testInputs();
	await saveShop(db, shop);
	const plan = handPlan();
	const jobId = 'job-00001';
	await createJob(db, { id: jobId, plan, by: CREW.supervisor, at: AT, content: {} });
	const acts = actsOf(plan, jobId, ({ coatIndex }) => coatIndex > 0);
	const end = acts.findIndex(({ event }) => event.type === type);
	const post = ({ id, seq, event }: (typeof acts)[number], change: Partial<ProcessEvent> = {}) =>
		appendEvent(db, {
			jobId,
			id,
			seq,
			event: { ...event, ...change } as ProcessEvent,
			recordedAt: event.at,
			isSigned: true
		});
	for (const act of acts.slice(0, end)) expect((await post(act)).status).toBe('appended');
	if (asksTraining) await saveShop(db, { ...shop, asksTraining });
	const finish = acts[end];
	if (!finish) throw new Error(`no ${type}`);
	return { db, finish, post, then: acts[end + 1] };
}
const atTheBriefing = (asksTraining: boolean) => beforeThe('brief.finished', asksTraining);

/** Gives the rehearsed worker, who is nobody of a store, a name in it and a training. */
async function train(db: Db, expiresAt: string, passedAt = AT, id: string = CREW.worker) {
	await db
		.insertInto('person')
		.values({
			id,
			name: `Ben Marsh of ${id}`,
			role: 'mold maker',
			pin_hash: '',
			retired: 0,
			added_at: AT,
			pin_given_by: null,
			pin_set_at: null
		})
		.execute();
	await insertRound(db, {
		round: `round of ${id}`,
		personId: id,
		kind: 'isocyanate',
		at: passedAt,
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

test('what was passed after the act does not count for it', async () => {
	const late = await atTheBriefing(true);
	const after = new Date(Date.parse(late.finish.event.at) + 1000).toISOString();
	await train(late.db, later(10 * 86_400), after);
	expect(await post2(late)).toBe('refused');
});

test('a cup is weighed by somebody in date; weighed, it is mixed though the training ran out', async () => {
	const untrained = await beforeThe('cup.weighed', true);
	expect(await post2(untrained)).toBe('refused');
	const { db, finish, post, then } = await beforeThe('cup.weighed', true);
	await train(db, new Date(Date.parse(finish.event.at) + 1).toISOString());
	expect((await post(finish)).status).toBe('appended');
	if (then?.event.type !== 'cup.mixed') throw new Error('nothing is mixed');
	expect(await post(then)).toMatchObject({ status: 'appended' });
});

describe('a cup mixed beside who lays, by somebody whose training is not in date', () => {
	/** The next cup is weighed while one is laid, by the rehearsed worker, who is in date. */
	async function beforeMixing(mixer: string) {
		const db = await testStore();
		await saveShop(db, { ...testInputs().shop, asksTraining: true });
		const plan = handPlan({ people: 2 });
		const jobId = 'job-00001';
		const log = new BenchLog(plan).toCoats().brief(mixer).coat(180);
		log.do('cup.weighed', CUP).do('cup.mixed').do('cup.weighed', CUP);
		const by: Record<string, string> = { [MAKER]: CREW.worker };
		const at = log.log[0]?.event.at ?? AT;
		await createJob(db, { id: jobId, plan, by: CREW.supervisor, at, content: {} });
		await train(db, later(10_000 * 86_400), '2025-01-01T00:00:00.000Z');
		const post = (seq: number, event: ProcessEvent) =>
			appendEvent(db, {
				jobId,
				id: `act-${seq}`,
				seq,
				event: { ...event, by: by[event.by] ?? event.by },
				recordedAt: event.at,
				isSigned: true
			});
		for (const { seq, event } of log.log.slice(1)) {
			expect(await post(seq, event), event.type).toMatchObject({ status: 'appended' });
		}
		const mix = (given: object = {}) =>
			post(log.log.length + 1, {
				type: 'cup.mixed',
				at: log.at,
				by: MAKER,
				mixedBy: mixer,
				...given
			} as ProcessEvent);
		return { db, mix, jobId };
	}
	const CUP = { massesG: { A: 80, B: 100 }, lots: { A: 'a1', B: 'b1' } };
	const noted = async (db: Db, jobId: string) => {
		const { state } = await jobOrError(db, jobId);
		return contextOf(state).deviations.map(({ what, blocking }) => [what, blocking]);
	};

	test('is kept in the record and noted, not lost', async () => {
		const { db, mix, jobId } = await beforeMixing('amir');
		const answer = await mix();
		expect(answer).toMatchObject({
			status: 'appended',
			stored: { event: { mixedBy: 'amir', notInDate: true } }
		});
		expect(await noted(db, jobId)).toEqual([
			['A cup was mixed by a person whose training on isocyanates was not in date.', false]
		]);
		// Sent again it is the same act, though the server has added to it.
		expect(await mix()).toMatchObject({ status: 'duplicate' });
	});

	test.each([CREW.supervisor, 'constructor', '__proto__'])(
		'is none at all of %s, who has not read the briefings',
		async (mixedBy) => {
			const { mix } = await beforeMixing('amir');
			expect(await mix({ mixedBy })).toMatchObject({
				status: 'refused',
				reason: expect.stringContaining('say who mixes it')
			});
		}
	);

	test('is what the store knows of, whatever the sender says', async () => {
		const { db, mix, jobId } = await beforeMixing('amir');
		await train(db, later(10_000 * 86_400), '2025-01-01T00:00:00.000Z', 'amir');
		const answer = await mix({ notInDate: true });
		expect('stored' in answer && answer.stored.event).not.toHaveProperty('notInDate');
		expect(await noted(db, jobId)).toEqual([]);
	});

	test('is asked about at the bench before it is entered, in the reader’s language', async () => {
		const { db, jobId } = await beforeMixing('amir');
		const { log } = await jobOrError(db, jobId);
		const form = new FormData();
		const fields = {
			type: 'cup.mixed',
			mixedBy: 'amir',
			seq: String(log.length),
			id: newActId()
		};
		for (const [name, value] of Object.entries(fields)) form.set(name, value);
		const words = await loadWords('es-ES');
		const given = { jobId, by: CREW.worker, zone: 'UTC', form, words };
		expect(await actFromForm(db, given)).toMatchObject({
			status: 409,
			data: { question: expect.stringMatching(/^De quien mezcla: no consta ninguna formación/) }
		});
	});
});

test('a bench is told of nobody else’s training', async () => {
	const db = await testStore();
	const [ben, dee] = [await somebody(db), await somebody(db, 'Dee Okafor')];
	for (const personId of [ben, dee]) await round(db, personId, { at: AT });
	const shop = { ...testInputs().shop, asksTraining: true };
	const expiresAt = '2031-03-02T14:00:00.000Z';
	const asked = (personId: string, at: string) => askedTraining(db, shop, { personId, at });
	expect(await asked(ben, later(60))).toEqual({ [ben]: expiresAt });
	expect(await asked('constructor', later(60))).toEqual({});
	expect(await asked(ben, later(-60))).toEqual({});
	expect(await askedTraining(db, testInputs().shop, { personId: ben, at: AT })).toBeNull();
});
