import { expect, test } from 'vitest';
import { verifyChain } from '../../src/lib/core/log/chain';
import { newActId } from '../../src/lib/server/act-id';
import { postActs } from '../../src/lib/server/acts';
import type { Db } from '../../src/lib/server/database';
import { readEvents } from '../../src/lib/server/event-rows';
import { createJob } from '../../src/lib/server/jobs.repository';
import { onAppended } from '../../src/lib/server/live';
import { handPlan } from '../fixtures/plan';
import { AT, CREW } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const room = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };
const act = (jobId: string, seq: number, event: { type: string } = room) => ({
	jobId,
	id: newActId(),
	seq,
	event
});

async function shopWith(...jobIds: string[]): Promise<Db> {
	const db = await testStore();
	for (const id of jobIds) {
		await createJob(db, { id, plan: handPlan(), by: CREW.supervisor, at: AT, content: {} });
	}
	return db;
}
const asked = (db: Db) => ({ db, by: CREW.worker, requestId: 'request' });
const statuses = (answers: ReadonlyArray<{ status: number }>) => answers.map((a) => a.status);
const codes = (answers: readonly object[]) =>
	answers.map((answer) =>
		'problem' in answer ? (answer.problem as { code: string }).code : 'written'
	);

test('acts of several molds in one request are each written once, in order', async () => {
	const db = await shopWith('job-a', 'job-b');
	const heard: string[] = [];
	const off = onAppended(({ jobId, seq }) => heard.push(`${jobId} ${seq}`));
	const acts = [act('job-a', 2), act('job-b', 2), act('job-a', 3), act('job-b', 3)];
	const answers = await postActs(asked(db), acts);
	expect(statuses(answers)).toEqual([201, 201, 201, 201]);
	expect(answers.map(({ id }) => id)).toEqual(acts.map(({ id }) => id));
	expect(heard.toSorted()).toEqual(['job-a 2', 'job-a 3', 'job-b 2', 'job-b 3']);
	expect(statuses(await postActs(asked(db), acts))).toEqual([200, 200, 200, 200]);
	off();
	for (const jobId of ['job-a', 'job-b']) {
		const log = await readEvents(db, jobId);
		expect(verifyChain(log)).toMatchObject({ ok: true });
		expect(log.slice(1).map(({ id }) => id)).toEqual(
			acts.filter((a) => a.jobId === jobId).map(({ id }) => id)
		);
	}
});

test('what is not taken holds back what follows it on its mold, also when the number fits', async () => {
	const db = await shopWith('job-a', 'job-b');
	// Somebody else was faster by one: the second act's number fits, but it was done after the first.
	await postActs(asked(db), [act('job-a', 2)]);
	const answers = await postActs(asked(db), [act('job-a', 2), act('job-a', 3), act('job-b', 2)]);
	expect(codes(answers)).toEqual(['conflict', 'held', 'written']);
	expect(await readEvents(db, 'job-a')).toHaveLength(2);
});

test('an act that cannot be read, or is somebody else’s, is named; those before it stand', async () => {
	const db = await shopWith('job-a', 'job-b');
	const answers = await postActs(asked(db), [
		act('job-a', 2),
		act('job-a', 3, { ...room, humidityPct: 'wet' } as { type: string }),
		act('job-a', 4),
		act('job-b', 2, { ...room, by: CREW.supervisor } as { type: string }),
		act('nowhere', 2)
	]);
	expect(codes(answers)).toEqual(['written', 'invalid', 'held', 'not-the-doer', 'no-job']);
	expect(await readEvents(db, 'job-a')).toHaveLength(2);
	expect(await readEvents(db, 'job-b')).toHaveLength(1);
});

test('an id of another mold’s act is refused, and what came with it is judged all the same', async () => {
	const db = await shopWith('job-a', 'job-b');
	const first = act('job-a', 2);
	await postActs(asked(db), [first]);
	const answers = await postActs(asked(db), [
		{ ...act('job-b', 2), id: first.id },
		act('job-a', 3)
	]);
	expect(codes(answers)).toEqual(['refused', 'written']);
	expect(answers[0]).toMatchObject({ problem: { detail: expect.stringMatching(/another job/) } });
});

test('within one list, an id that comes twice is one act', async () => {
	const db = await shopWith('job-a');
	const twice = act('job-a', 2);
	expect(codes(await postActs(asked(db), [twice, { ...twice, seq: 3 }]))).toEqual([
		'written',
		'written'
	]);
	expect(await readEvents(db, 'job-a')).toHaveLength(2);
});

test('what the device’s clock said is part of the record, and sent again it may differ', async () => {
	const db = await shopWith('job-a');
	const sent = act('job-a', 2, { ...room, sentAt: '2026-03-02T14:09:00.000Z' } as { type: string });
	expect(statuses(await postActs(asked(db), [sent]))).toEqual([201]);
	const again = { ...sent, event: { ...room, sentAt: '2026-03-02T15:00:00.000Z' } };
	expect(statuses(await postActs(asked(db), [again]))).toEqual([200]);
	const [, stored] = await readEvents(db, 'job-a');
	expect(stored?.event.sentAt).toBe('2026-03-02T14:09:00.000Z');
});
