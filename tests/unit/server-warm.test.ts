import { expect, test } from 'vitest';
import { jobCacheOf } from '../../src/lib/server/job-cache';
import { listJobs } from '../../src/lib/server/jobs.repository';
import { warmJobs } from '../../src/lib/server/warm-jobs';
import { storedJob } from '../fixtures/server-store';
import { newPlace, tamper, testStore } from '../fixtures/test-store';

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
	expect(await warmJobs(db)).toBe(3);
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
	expect(await warmJobs(db, AbortSignal.abort())).toBe(0);
});
