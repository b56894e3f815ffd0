import { newActId } from '../../src/lib/server/act-id';
import { detailInputs, testInputs, testSheet } from '../fixtures/materials';
import { expect, testOnOneServer } from './app';
import { seedShop, signIn, WORKER_PIN } from './seeded-shop';

const test = testOnOneServer(async ({ url, dataDir }) => {
	const { worker } = await seedShop(dataDir, { jobs: 0 });
	return { worker, cookie: await signIn(url, worker.id, WORKER_PIN) };
});

interface Planned {
	plan: { coats: Array<{ kind: string }>; warnings: Array<{ severity: string }> };
	planHash: string;
}

test('a plan is computed from inputs, the same one every time, with its hash', async ({
	filled: { cookie },
	request
}) => {
	const post = async (data: object) =>
		(await request.post('/api/plan', { headers: { cookie }, data })).json() as Promise<Planned>;
	const first = await post(testInputs());
	expect(first.planHash).toMatch(/^[0-9a-f]{64}$/);
	expect(first.plan.coats.filter(({ kind }) => kind === 'detail')).toEqual([]);
	expect(first.plan.coats.length).toBeGreaterThan(1);
	expect((await post(testInputs())).planHash).toBe(first.planHash);

	const fine = await post(detailInputs());
	expect(fine.planHash).not.toBe(first.planHash);
	expect(fine.plan.coats.filter(({ kind }) => kind === 'detail').length).toBeGreaterThan(0);
});

test('a plan that was seen opens a job; sent twice it is one job; it can be worked on', async ({
	filled: { cookie, worker },
	request
}) => {
	const headers = { cookie };
	const inputs = testInputs();
	const planned = await request.post('/api/plan', { headers, data: inputs });
	const { planHash } = (await planned.json()) as Planned;
	const data = { id: 'job-sent-twice', inputs, planHash };
	const opened = await request.post('/api/jobs', { headers, data });
	expect([opened.status(), await opened.json()]).toEqual([201, { id: data.id, planHash }]);
	const again = await request.post('/api/jobs', { headers, data });
	expect(again.status()).toBeLessThan(500);

	const { jobs } = await (await request.get('/api/jobs', { headers })).json();
	expect(jobs).toHaveLength(1);
	expect(jobs[0]).toMatchObject({ id: data.id, headSeq: 1, summary: { phase: 'brief' } });
	const job = await (await request.get(`/api/jobs/${data.id}`, { headers })).json();
	expect(job).toMatchObject({ planHash, headSeq: 1, log: [{ event: { by: worker.id } }] });
	const act = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };
	const posted = await request.post(`/api/jobs/${data.id}/events`, {
		headers,
		data: { id: newActId(), seq: 2, event: act }
	});
	expect(posted.status()).toBe(201);
});

test('a plan other than the one seen, a forbidden one and an impossible one open nothing', async ({
	filled: { cookie },
	request
}) => {
	const headers = { cookie };
	const countJobs = async () =>
		((await (await request.get('/api/jobs', { headers })).json()) as { jobs: object[] }).jobs
			.length;
	const before = await countJobs();
	const other = await request.post('/api/jobs', {
		headers,
		data: { inputs: testInputs(), planHash: '0'.repeat(64) }
	});
	expect([other.status(), await other.json()]).toMatchObject([409, { code: 'other-plan' }]);

	// A platinum silicone does not cure on sulfur clay: common practice, no source.
	const { pattern, materials } = testInputs();
	const inputs = testInputs({
		pattern: { ...pattern, material: 'sulfur clay' },
		materials: { ...materials, build: testSheet('brush-platinum') }
	});
	const planned = await request.post('/api/plan', { headers, data: inputs });
	const { plan, planHash } = (await planned.json()) as Planned;
	expect(plan.warnings.map(({ severity }) => severity)).toContain('refuse');
	const refused = await request.post('/api/jobs', { headers, data: { inputs, planHash } });
	expect(refused.status()).toBe(422);

	const wrong = testInputs({ people: -3 });
	const impossible = await request.post('/api/plan', { headers, data: wrong });
	expect([impossible.status(), await impossible.json()]).toMatchObject([
		422,
		{ detail: expect.stringMatching(/people/) }
	]);
	expect(await countJobs()).toBe(before);
});
