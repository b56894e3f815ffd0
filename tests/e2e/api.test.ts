import { randomUUID } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { APIRequestContext } from '@playwright/test';
import { newActId } from '../../src/lib/server/act-id';
import { TINY_PNG } from '../fixtures/filled-shop';
import { expect, test } from './app';
import { seedShop, SUPERVISOR_PIN, WORKER_PIN, type SeededShop } from './seeded-shop';

const PROBLEM = 'application/problem+json';
const room = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };

async function signedIn(request: APIRequestContext, dataDir: string): Promise<SeededShop> {
	const shop = await seedShop(dataDir);
	const data = { personId: shop.worker.id, pin: WORKER_PIN };
	expect((await request.post('/api/session', { data })).status()).toBe(201);
	return shop;
}

test('before a shop is set up the API says where to begin, and pages lead there', async ({
	request
}) => {
	const jobs = await request.get('/api/jobs');
	expect(jobs.status()).toBe(409);
	expect(await jobs.json()).toMatchObject({ code: 'no-shop', type: 'about:blank' });
	const page = await request.get('/board', { maxRedirects: 0 });
	expect([page.status(), page.headers().location]).toEqual([303, '/start']);
});

test('without a session nothing of a job can be read or written', async ({ app, request }) => {
	const { jobIds } = await seedShop(app.dataDir);
	for (const path of ['', '/events', '/live', '/record.json', '/nonsense']) {
		const answer = await request.get(`/api/jobs/${jobIds[0]}${path}`);
		expect([path, answer.status()]).toEqual([path, 401]);
		expect(answer.headers()['content-type']).toBe(PROBLEM);
	}
	const hidden = await request.get(`/%61pi/jobs/${jobIds[0]}`);
	expect(hidden.status()).toBe(401);
	const page = await request.get(`/jobs/${jobIds[0]}`, { maxRedirects: 0 });
	expect(page.headers().location).toBe(`/sign-in?next=%2Fjobs%2F${jobIds[0]}`);
});

test('every route of the API is in the OpenAPI document, and nothing else', async ({ request }) => {
	const folder = fileURLToPath(new URL('../../src/routes/api', import.meta.url));
	const routes = readdirSync(folder, { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('+server.ts'))
		.map((name) => `/api/${name.replace('/+server.ts', '').replaceAll(/\[(\w+)\]/g, '{$1}')}`);
	const document = (await (await request.get('/api/openapi.json')).json()) as {
		openapi: string;
		paths: object;
	};
	expect(document.openapi).toBe('3.1.0');
	expect(Object.keys(document.paths).sort()).toEqual(routes.sort());
	const schema = await (await request.get('/api/schema/record.json')).json();
	expect(schema).toMatchObject({ type: 'object', properties: { events: { type: 'array' } } });
});

test('an act is written once, a late one is told so, a forbidden one is told what goes', async ({
	app,
	request
}) => {
	const { jobIds, worker } = await signedIn(request, app.dataDir);
	const path = `/api/jobs/${jobIds[0]}/events`;
	const data = { id: newActId(), seq: 2, event: room };
	const first = await request.post(path, { data });
	expect(first.status()).toBe(201);
	expect(await first.json()).toMatchObject({ stored: { seq: 2, event: { by: worker.id } } });
	expect((await request.post(path, { data })).status()).toBe(200);

	const late = await request.post(path, { data: { ...data, id: newActId() } });
	expect([late.status(), await late.json()]).toMatchObject([
		409,
		{
			code: 'conflict',
			headSeq: 2,
			since: [{ seq: 2, id: data.id }],
			allowed: expect.arrayContaining(['room.read'])
		}
	]);
	const opened = { type: 'mold.opened', boardOff: true, wedgedEvenly: true };
	const refused = await request.post(path, { data: { id: newActId(), seq: 3, event: opened } });
	expect([refused.status(), await refused.json()]).toMatchObject([409, { code: 'refused' }]);
	const forged = { ...room, by: 'somebody-else' };
	const other = await request.post(path, { data: { id: newActId(), seq: 3, event: forged } });
	expect([other.status(), await other.json()]).toMatchObject([403, { code: 'not-the-doer' }]);
	const own = { ...room, by: worker.id };
	const answer = await request.post(path, { data: { id: newActId(), seq: 3, event: own } });
	expect(await answer.json()).toMatchObject({ stored: { event: { by: worker.id } } });
	const log = await (await request.get(`${path}?after=2`)).json();
	expect(log).toMatchObject({ headSeq: 3, events: [{ seq: 3 }] });
	const job = await (await request.get(`/api/jobs/${jobIds[0]}`)).json();
	expect(job).toMatchObject({ headSeq: 3, step: { phase: expect.any(String) } });
});

test('bad input gets a clear answer and changes nothing', async ({ app, request }) => {
	const { jobIds } = await signedIn(request, app.dataDir);
	const path = `/api/jobs/${jobIds[0]}/events`;
	const at = (event: object) => JSON.stringify({ id: newActId(), seq: 2, event });
	const number = (text: string) => at(room).replace('"temperatureC":22', `"temperatureC":${text}`);
	const bodies: Array<[string, number, RegExp]> = [
		['', 400, /not JSON/],
		['{', 400, /not JSON/],
		['null', 422, /object/],
		['[]', 422, /object/],
		[number('NaN'), 400, /not JSON/],
		[number('1e308'), 422, /temperatureC/],
		[number('1e999'), 422, /temperatureC/],
		[number('-400'), 422, /temperatureC.*-10/],
		[number('"22 C"'), 422, /temperatureC/],
		[at({ ...room, surprise: 1 }), 422, /surprise/],
		[at({ type: 'trouble.reported', trouble: 'spill', note: 'x'.repeat(10_000) }), 422, /note/],
		// Somebody hurt needs no words; for a spill the process asks for them.
		[
			at({ type: 'trouble.reported', trouble: 'something-else', note: '   ' }),
			409,
			/in a few words/
		],
		[at({ type: 'trouble.reported', trouble: 'spill', note: '\ud800' }), 422, /half a character/],
		[at({ type: 'no.such.act' }), 422, /type/],
		[at({ ...room, at: 'yesterday' }), 422, /at is “yesterday”; accepted: an instant in UTC/],
		[JSON.stringify({ id: '../../x', seq: 2, event: room }), 422, /id/],
		// A UUID of version 4, which does not sort by time.
		[JSON.stringify({ id: randomUUID(), seq: 2, event: room }), 422, /version 7/],
		[JSON.stringify({ id: newActId(), seq: 1.5, event: room }), 422, /seq/],
		[`${'['.repeat(200_000)}${']'.repeat(200_000)}`, 422, /object/]
	];
	for (const [data, status, words] of bodies) {
		const headers = { 'content-type': 'application/json' };
		const answer = await request.post(path, { headers, data: Buffer.from(data) });
		const problem = (await answer.json()) as { detail: string };
		const what = `${data.slice(0, 80)} -> ${JSON.stringify(problem)}`;
		expect(answer.status(), what).toBe(status);
		expect(problem.detail, what).toMatch(words);
		expect(answer.headers()['content-type']).toBe(PROBLEM);
	}
	const plain = await request.post(path, {
		headers: { 'content-type': 'text/x-json' },
		data: '{}'
	});
	expect(plain.status()).toBe(415);
	const elsewhere = await request.post('/api/jobs/none-such/events', {
		data: { id: newActId(), seq: 2, event: room }
	});
	expect(elsewhere.status()).toBe(404);
	expect((await request.put(path, { data: {} })).status()).toBe(405);
	expect((await request.get(`${path}?after=-1`)).status()).toBe(422);
	const log = await (await request.get(path)).json();
	expect(log).toMatchObject({ headSeq: 1 });
});

test('HTML in a text comes back as text', async ({ app, request }) => {
	const { jobIds } = await signedIn(request, app.dataDir);
	const note = '<script>alert(1)</script><img src=x onerror=alert(1)>';
	const event = { type: 'trouble.reported', trouble: 'spill', note };
	const path = `/api/jobs/${jobIds[0]}/events`;
	const answer = await request.post(path, { data: { id: newActId(), seq: 2, event } });
	expect(await answer.json()).toMatchObject({ stored: { event: { note } } });
	expect(answer.headers()).toMatchObject({
		'content-type': 'application/json',
		'x-content-type-options': 'nosniff'
	});
});

test('a request that is too large, or from a page elsewhere, is turned away', async ({
	app,
	request
}) => {
	const { jobIds } = await signedIn(request, app.dataDir);
	const headers = { 'content-type': 'application/json' };
	const path = `/api/jobs/${jobIds[0]}/events`;
	const large = await request.post(path, { headers, data: Buffer.alloc(9_000_000, 0x20) });
	expect([large.status(), await large.json()]).toMatchObject([413, { code: 'too-large' }]);
	const foreign = await request.post(path, {
		headers: { origin: 'http://elsewhere.example' },
		data: { id: newActId(), seq: 2, event: room }
	});
	expect([foreign.status(), await foreign.json()]).toMatchObject([403, { code: 'foreign-origin' }]);
});

test('only a supervisor with the right PIN signs, and wrong PINs are slowed', async ({
	app,
	request
}) => {
	const { jobIds, supervisor, worker } = await signedIn(request, app.dataDir);
	const path = `/api/jobs/${jobIds[0]}/sign`;
	const word = { decision: 'reject', seq: 2, reason: 'A crack through the board.' };
	const by = (personId: string, pin: string) =>
		request.post(path, { data: { ...word, id: newActId(), supervisorId: personId, pin } });
	expect(await (await by(worker.id, WORKER_PIN)).json()).toMatchObject({ code: 'may-not-sign' });
	const statuses: number[] = [];
	for (let n = 0; n < 4; n++) statuses.push((await by(supervisor.id, '0000')).status());
	expect(statuses).toEqual([403, 403, 429, 429]);
	const slowed = await by(supervisor.id, SUPERVISOR_PIN);
	expect([slowed.status(), Number(slowed.headers()['retry-after'])]).toEqual([
		429,
		expect.any(Number)
	]);
	await app.advanceClock(6);
	const signed = await by(supervisor.id, SUPERVISOR_PIN);
	// The PIN is taken; a mold that was never inspected cannot be rejected.
	expect([signed.status(), await signed.json()]).toMatchObject([409, { code: 'refused' }]);
});

test('a screen that listens hears of an act within a second', async ({ app, request }) => {
	const { jobIds } = await signedIn(request, app.dataDir);
	const { cookies } = await request.storageState();
	const cookie = cookies.map(({ name, value }) => `${name}=${value}`).join('; ');
	const response = await fetch(`${app.url}/api/jobs/${jobIds[0]}/live`, { headers: { cookie } });
	expect(response.headers.get('content-type')).toBe('text/event-stream');
	const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
	let heard = '';
	const hear = async (words: string) => {
		while (!heard.includes(words)) heard += (await reader?.read())?.value ?? '';
	};
	await hear('data: {"seq":1}');
	const startedAt = Date.now();
	await request.post(`/api/jobs/${jobIds[0]}/events`, {
		data: { id: newActId(), seq: 2, event: room }
	});
	await hear('data: {"seq":2}');
	expect(Date.now() - startedAt).toBeLessThan(1000);
	await app.restart();
	await reader?.cancel().catch(() => {});
});

test('photos are known by their content, kept once and served as what they are', async ({
	app,
	request
}) => {
	await signedIn(request, app.dataDir);
	const png = TINY_PNG;
	const saved = await request.post('/api/photos', {
		headers: { 'content-type': 'image/png' },
		data: png
	});
	expect(saved.status()).toBe(201);
	const { hash } = (await saved.json()) as { hash: string };
	const photo = await request.get(`/api/photos/${hash}`);
	expect(photo.headers()['content-type']).toBe('image/png');
	expect(await photo.body()).toEqual(png);
	const html = await request.post('/api/photos', {
		headers: { 'content-type': 'image/png' },
		data: Buffer.from('<html><script>alert(1)</script>')
	});
	expect([html.status(), await html.json()]).toMatchObject([
		422,
		{ detail: expect.stringMatching(/JPEG, PNG or WebP/) }
	]);
	expect((await request.get(`/api/photos/${'0'.repeat(64)}`)).status()).toBe(404);
});

test('every answer carries the headers that keep a browser from guessing or framing', async ({
	app,
	request
}) => {
	await seedShop(app.dataDir);
	for (const path of ['/healthz', '/api/jobs', '/api/openapi.json', '/sign-in', '/nowhere']) {
		const {
			'x-content-type-options': sniff,
			'x-frame-options': frame,
			...rest
		} = (await request.get(path)).headers();
		expect([path, sniff, frame]).toEqual([path, 'nosniff', 'DENY']);
		expect(rest['referrer-policy']).toBe('same-origin');
		expect(rest['permissions-policy']).toContain('geolocation=()');
		expect(rest['x-request-id']).toMatch(/^[0-9a-f-]{36}$/);
	}
});
