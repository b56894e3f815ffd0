import { expect, test } from 'vitest';
import { postAct } from '../../src/lib/server/act';
import { jobCacheOf } from '../../src/lib/server/job-cache';
import { projectJobs } from '../../src/lib/server/job-projection';
import { getJob, listJobs } from '../../src/lib/server/jobs.repository';
import { warmJobs } from '../../src/lib/server/warm-jobs';
import { CREW, storedJob } from '../fixtures/server-store';
import { newPlace, tamper, testStore } from '../fixtures/test-store';

const line = ({ id }: { id: string }) => id;

async function startedAnew() {
	const place = await newPlace();
	const db = await testStore(place);
	for (const id of ['job-00001', 'job-00002', 'job-00003']) await storedJob(db, 'frame', id);
	await tamper(db, `update event set event = '{' where job_id = 'job-00002' and seq = 3`);
	// A server that starts afresh has nothing folded yet.
	return testStore(place);
}

test('after a start every whole job is folded ahead, and the board takes it as it is', async () => {
	const db = await startedAnew();
	expect(await warmJobs(db, line)).toBe(3);
	const folded = jobCacheOf(db);
	expect([...folded.keys()].sort()).toEqual(['job-00001', 'job-00003']);
	const lines = await listJobs(db);
	for (const { id, state, damage } of lines) {
		expect([id, state]).toEqual([id, folded.get(id)?.state ?? null]);
		expect(damage === null).toBe(folded.has(id));
	}
});

test('a server that stops reads no further', async () => {
	const db = await startedAnew();
	expect(await warmJobs(db, line, AbortSignal.abort())).toBe(0);
});

test('what was made of a job is made again only when the job has grown', async () => {
	const place = await newPlace();
	const db = await testStore(place);
	const { acts } = await storedJob(db, 'brief', 'job-00001');
	await storedJob(db, 'brief', 'job-00002');
	const made: string[] = [];
	const note = ({ id, headSeq }: { id: string; headSeq: number }) => {
		made.push(id);
		return headSeq;
	};
	const before = await projectJobs(db, note);
	expect(await projectJobs(db, note)).toEqual(before);
	expect(made.toSorted()).toEqual(['job-00001', 'job-00002']);
	const head = 1 + acts.length;
	const event = { type: 'trouble.reported', trouble: 'spill', note: 'A cup fell over.' };
	const by = CREW.worker;
	await postAct(db, { jobId: 'job-00001', id: 'spill', seq: head + 1, by, event });
	expect((await projectJobs(db, note)).toSorted()).toEqual([head, head + 1]);
	expect(made.slice(2)).toEqual(['job-00001']);
});

test('a store that was put back to an earlier day is read afresh', async () => {
	const db = await testStore(await newPlace());
	const { acts } = await storedJob(db, 'pattern', 'job-00001');
	const head = 1 + acts.length;
	expect((await getJob(db, 'job-00001'))?.headSeq).toBe(head);
	await tamper(db, `delete from event where seq = ${head}`, 'delete');
	expect((await getJob(db, 'job-00001'))?.headSeq).toBe(head - 1);
});
