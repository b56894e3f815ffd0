import { mkdtempSync, rmSync } from 'node:fs';
import { request as plainRequest } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { newActId } from '../../src/lib/server/act-id';
import { expect, test } from './app';
import { seedShop, signIn, SUPERVISOR_PIN, WORKER_PIN } from './seeded-shop';
import { freePort } from '../fixtures/free-port';
import { ServerProcess } from './server-process';

/** A server of its own with its own environment, for as long as `use` takes. */
async function withServer(
	env: Record<string, string>,
	use: (server: ServerProcess, dataDir: string) => Promise<void>
) {
	const folder = mkdtempSync(join(tmpdir(), 'glovewright-guard-'));
	const dataDir = join(folder, 'data');
	const clockFile = join(folder, 'clock-offset');
	const server = new ServerProcess({ port: await freePort(), dataDir, clockFile, env });
	await server.start();
	await use(server, dataDir);
	await server.end('SIGTERM');
	rmSync(folder, { recursive: true, force: true });
}

test('no answer lets a page run inline scripts or styles, files and refusals included', async ({
	app,
	request
}) => {
	const { worker } = await seedShop(app.dataDir);
	const cookie = await signIn(app.url, worker.id, WORKER_PIN);
	const page = await (await request.get('/sign-in')).text();
	const asset = /\/_app\/immutable\/[^"]+\.js/.exec(page)?.[0] ?? '';
	expect(asset).not.toBe('');
	const paths = ['/board', '/people', '/', '/nowhere', '/api/jobs', '/api/nowhere', '/healthz'];
	for (const path of [...paths, '/readyz', asset, '/icon.svg', '/board/%zz', '/%2e%2e/x']) {
		for (const headers of [{ cookie }, undefined]) {
			const response = await fetch(app.url + path, {
				redirect: 'manual',
				...(headers ? { headers } : {})
			});
			const policy = response.headers.get('content-security-policy') ?? '';
			expect([path, policy]).toEqual([path, expect.stringMatching(/default-src '(self|none)'/)]);
			expect(policy, path).not.toMatch(/unsafe-(inline|eval)/);
			expect(policy, path).toContain("frame-ancestors 'none'");
			expect(response.headers.get('x-content-type-options'), path).toBe('nosniff');
			expect(response.headers.get('server'), path).toBeNull();
			expect(response.headers.get('x-powered-by'), path).toBeNull();
		}
	}
	// An address that cannot be decoded once ended the server.
	expect((await fetch(`${app.url}/board/%zz`)).status).toBe(400);
	expect((await fetch(`${app.url}/healthz`)).status).toBe(200);
});

test('a page of another site cannot post a form here', async ({ app }) => {
	await seedShop(app.dataDir);
	const post = (headers: Record<string, string>) =>
		fetch(`${app.url}/sign-in`, {
			method: 'POST',
			headers: { 'content-type': 'application/x-www-form-urlencoded', ...headers },
			body: 'person=nobody&pin=0000',
			redirect: 'manual'
		});
	const elsewhere: Array<Record<string, string>> = [
		{ origin: 'http://elsewhere.example' },
		{ origin: 'null' },
		{ 'sec-fetch-site': 'cross-site' }
	];
	for (const foreign of elsewhere) {
		expect((await post(foreign)).status, JSON.stringify(foreign)).toBe(403);
	}
	// Our own page is heard, though nobody of that name is here.
	const heard = await post({ origin: app.url });
	expect(await heard.text()).toContain('That is not the PIN');
});

test('the cookie of a session is kept from scripts and from other sites', async ({ app }) => {
	const { worker } = await seedShop(app.dataDir);
	const response = await fetch(`${app.url}/api/session`, {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ personId: worker.id, pin: WORKER_PIN })
	});
	const [cookie = ''] = response.headers.getSetCookie();
	expect(cookie).toMatch(/HttpOnly/i);
	expect(cookie).toMatch(/SameSite=Strict/i);
});

test('an address that runs wild is told to wait; whoever watches the server is not', async () => {
	await withServer({ GLOVEWRIGHT_RATE_FACTOR: '0.1' }, async ({ url }, dataDir) => {
		const { worker } = await seedShop(dataDir);
		const statuses: number[] = [];
		for (let i = 0; i < 8; i++) {
			const response = await fetch(`${url}/api/session`, {
				method: 'POST',
				headers: { 'content-type': 'application/json' },
				body: JSON.stringify({ personId: worker.id, pin: WORKER_PIN })
			});
			statuses.push(response.status);
			if (response.status === 429) {
				expect(Number(response.headers.get('retry-after'))).toBeGreaterThan(0);
				expect(await response.json()).toMatchObject({ code: 'too-many-requests' });
			}
		}
		expect(statuses.slice(0, 3)).toEqual([201, 201, 201]);
		expect(statuses).toContain(429);
		for (let i = 0; i < 100; i++) expect((await fetch(`${url}/healthz`)).status).toBe(200);
	});
});

test('the log names each request by its id, and holds no PIN, cookie or query', async () => {
	await withServer({}, async (server, dataDir) => {
		const { worker, supervisor, jobIds } = await seedShop(dataDir);
		const cookie = await signIn(server.url, worker.id, WORKER_PIN);
		const known = await fetch(`${server.url}/board?next=what-was-typed`, { headers: { cookie } });
		const refused = await fetch(`${server.url}/api/jobs/${jobIds[0]}/sign`, {
			method: 'POST',
			headers: { cookie, 'content-type': 'application/json' },
			body: JSON.stringify({
				decision: 'sign',
				id: newActId(),
				seq: 2,
				supervisorId: supervisor.id,
				pin: '975310',
				hold: 'readyToCoat'
			})
		});
		expect(refused.status).toBe(403);
		const lines = server.said
			.split('\n')
			.filter((line) => line.startsWith('{'))
			.map((line) => JSON.parse(line) as Record<string, unknown>);
		const id = known.headers.get('x-request-id');
		expect(lines.find(({ requestId }) => requestId === id)).toMatchObject({
			method: 'GET',
			path: '/board',
			status: 200,
			person: worker.id
		});
		for (const secret of ['975310', WORKER_PIN, cookie.split('=')[1] ?? '?', 'what-was-typed']) {
			// Times and ids hold digits too, so a short PIN is looked for as a value.
			expect(server.said).not.toMatch(new RegExp(`["=:]${secret}\\b`));
		}
		expect(server.said).not.toContain(SUPERVISOR_PIN + '"');
	});
});

test('ready says which check failed; told to stop, it finishes what is under way and closes', async () => {
	await withServer({}, async (server, dataDir) => {
		const { worker } = await seedShop(dataDir);
		expect(await (await fetch(`${server.url}/readyz`)).json()).toMatchObject({ ready: true });
		const cookie = await signIn(server.url, worker.id, WORKER_PIN);
		const live = await fetch(`${server.url}/api/live`, { headers: { cookie } });
		const streamed = live.text();

		const body = JSON.stringify({ personId: worker.id, pin: WORKER_PIN });
		const slow = plainRequest(`${server.url}/api/session`, {
			method: 'POST',
			headers: { 'content-type': 'application/json', 'content-length': String(body.length) }
		});
		const answered = new Promise<number>((resolve, reject) => {
			slow.on('response', (response) => resolve(response.statusCode ?? 0));
			slow.on('error', reject);
		});
		slow.write(body.slice(0, 10));
		await new Promise((resolve) => setTimeout(resolve, 300));
		const ended = server.end('SIGTERM');
		await new Promise((resolve) => setTimeout(resolve, 300));
		slow.end(body.slice(10));
		expect(await answered).toBe(201);
		await ended;
		// A stream that was cut off would reject.
		expect(await streamed).toContain('retry:');
		await expect(fetch(`${server.url}/healthz`)).rejects.toThrow();
	});
});

test('a body that is too large is refused before it is read', async ({ app }) => {
	const { worker } = await seedShop(app.dataDir);
	const cookie = await signIn(app.url, worker.id, WORKER_PIN);
	const response = await fetch(`${app.url}/api/plan`, {
		method: 'POST',
		headers: { cookie, 'content-type': 'application/json' },
		body: JSON.stringify({ text: 'x'.repeat(2_100_000) })
	});
	expect(response.status).toBe(413);
	expect(await response.json()).toMatchObject({ code: 'too-large' });
});
