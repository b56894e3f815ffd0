import type { Cookies, RequestEvent } from '@sveltejs/kit';
import { sql } from 'kysely';
import { afterAll, beforeAll, expect, onTestFinished, test, vi } from 'vitest';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { newActId } from '../../src/lib/server/act-id';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planHash } from '../../src/lib/core/plan/plan-hash';
import { handle, init } from '../../src/hooks.server';
import type { Db } from '../../src/lib/server/database';
import { setOnlyKnownDevices } from '../../src/lib/server/devices';
import { createJob } from '../../src/lib/server/jobs.repository';
import { closeLive } from '../../src/lib/server/live';
import { openApiPaths } from '../../src/lib/server/openapi-paths';
import { addPerson } from '../../src/lib/server/people.repository';
import { TINY_PNG } from '../fixtures/filled-shop';
import { savePhoto } from '../../src/lib/server/photos';
import { RATES } from '../../src/lib/server/rate-limit';
import { createShop } from '../../src/lib/server/setup';
import { SESSION_COOKIE, startSession } from '../../src/lib/server/sessions';
import { openStore } from '../../src/lib/server/store';
import { MOST_STREAMS } from '../../src/lib/server/stream-slots';
import { testInputs, testShop } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';

type Handler = (event: RequestEvent) => Response | Promise<Response>;
type Module = Partial<Record<string, Handler>>;
const modules = import.meta.glob<Module>('../../src/routes/api/**/+server.ts', { eager: true });
const operations = Object.entries(openApiPaths).flatMap(([path, methods]) =>
	Object.entries(methods).map(([method, operation]) => ({
		name: `${method.toUpperCase()} ${path}`,
		method: method.toUpperCase(),
		path,
		statuses: Object.keys((operation as { responses: object }).responses).map(Number),
		takesJson: JSON.stringify(operation).includes(
			'"requestBody":{"required":true,"content":{"application/json"'
		),
		isOpen: 'security' in operation
	}))
);
/** What goes wrong beneath every route: documented for all, tried for some below. */
const BENEATH = [500, 503, 507];

interface Asked {
	body?: unknown;
	bytes?: Uint8Array<ArrayBuffer>;
	type?: string;
	origin?: string;
	token?: string;
	params?: Record<string, string>;
	query?: string;
	isTooLarge?: boolean;
	isLeftOpen?: boolean;
	address?: string;
}

let db: Db;
let tokens: { worker: string; apprentice: string; given: string };
let workerId = '';
let headId = '';
const seen = new Map<string, Set<number>>();

/** Asks the app as the framework would: through its hook, then the route's own handler. */
async function ask(name: string, asked: Asked = {}): Promise<number> {
	const [method = '', path = ''] = name.split(' ');
	const { params = { id: 'job-00001', hash: '0'.repeat(64) }, body, type, origin } = asked;
	const place = path.replace(/\{(\w+)\}/g, (_, key: string) => params[key] ?? '');
	const url = new URL(`http://shop.example${place}${asked.query ?? ''}`);
	const text = typeof body === 'string' ? body : JSON.stringify(body);
	const sent = asked.bytes ?? text;
	const request = new Request(url, {
		method,
		headers: { 'content-type': type ?? 'application/json', ...(origin ? { origin } : {}) },
		...(sent === undefined ? {} : { body: sent })
	});
	if (asked.isTooLarge) {
		// As the framework refuses a body over its limit.
		const refuse = () => Promise.reject(Object.assign(new Error('too large'), { status: 413 }));
		Object.assign(request, { text: refuse, arrayBuffer: refuse });
	}
	const cookies = {
		get: (key: string) => (key === SESSION_COOKIE ? asked.token : undefined),
		set: () => {},
		delete: () => {}
	} as unknown as Cookies;
	const event = {
		request,
		url,
		params,
		cookies,
		locals: {},
		getClientAddress: () => asked.address ?? '192.0.2.1'
	} as unknown as RequestEvent;
	const file = `../../src/routes${path.replaceAll('{', '[').replaceAll('}', ']')}/+server.ts`;
	const handler = modules[file]?.[method];
	if (!handler) throw new Error(`${name} has no handler`);
	const response = await handle({ event, resolve: async (given) => handler(given) });
	if (!asked.isLeftOpen) await response.body?.cancel();
	seen.set(name, (seen.get(name) ?? new Set()).add(response.status));
	return response.status;
}

const folder = mkdtempSync(join(tmpdir(), 'glovewright-api-'));

beforeAll(async () => {
	process.env.GLOVEWRIGHT_DATA = folder;
	await init();
	db = await openStore(folder);
});
afterAll(async () => {
	await db.destroy();
	rmSync(folder, { recursive: true, force: true });
});

test('every operation says what it answers to an address that asks too much', async () => {
	const address = '192.0.2.9';
	// The clock stands, or a slow machine is given new tokens meanwhile.
	vi.useFakeTimers({ toFake: ['performance'] });
	onTestFinished(() => void vi.useRealTimers());
	const { read, write, secret } = RATES;
	const askOften = async (name: string, times: number) => {
		for (let n = 0; n < times; n++)
			await ask(name, { address, origin: 'http://elsewhere.example' });
	};
	await askOften('GET /api/live', read.burst);
	await askOften('POST /api/photos', write.burst);
	await askOften('POST /api/session', secret.burst);
	for (const { name } of operations) {
		expect([name, await ask(name, { address })]).toEqual([name, 429]);
	}
});

test('every operation says what it answers before there is a shop, and to a page of another site', async () => {
	for (const { name, method, isOpen } of operations) {
		if (!isOpen) expect([name, await ask(name)]).toEqual([name, 409]);
		if (method !== 'GET') {
			const status = await ask(name, { origin: 'http://elsewhere.example' });
			expect([name, status]).toEqual([name, 403]);
		}
	}
});

test('every operation says what it answers without a session, and with a PIN that was given', async () => {
	const at = new Date().toISOString();
	const shop = { shop: testShop, owner: { name: 'Ada Quill', pin: '2468' }, at };
	const head = await createShop(db, shop);
	if (!head) throw new Error('there is a shop already');
	headId = head.id;
	const hire = (name: string, role: 'mold maker' | 'apprentice', by?: string) =>
		addPerson(db, { name, role, pin: '1357' }, at, by);
	const [worker, apprentice, given] = [
		await hire('Ben Marsh', 'mold maker'),
		await hire('Cy Tarn', 'apprentice'),
		await hire('Dee Holm', 'mold maker', head.id)
	];
	workerId = worker.id;
	tokens = {
		worker: await startSession(db, worker.id, at),
		apprentice: await startSession(db, apprentice.id, at),
		given: await startSession(db, given.id, at)
	};
	await createJob(db, { id: 'job-00001', plan: handPlan(), by: head.id, at, content: {} });
	for (const { name, isOpen } of operations) {
		if (isOpen) continue;
		expect([name, await ask(name)]).toEqual([name, 401]);
		expect([name, await ask(name, { token: tokens.given })]).toEqual([name, 403]);
	}
});

test('every operation that takes JSON says what it answers to a body it cannot read', async () => {
	const token = tokens.worker;
	for (const { name, takesJson } of operations) {
		if (!takesJson) continue;
		expect([name, await ask(name, { token, body: '{}', type: 'text/plain' })]).toEqual([name, 415]);
		expect([name, await ask(name, { token, body: '{' })]).toEqual([name, 400]);
		expect([name, await ask(name, { token, body: {} })]).toEqual([name, 422]);
		expect([name, await ask(name, { token, isTooLarge: true, body: {} })]).toEqual([name, 413]);
	}
});

test('what each operation can answer beside that', async () => {
	const token = tokens.worker;
	const nowhere = { id: 'none-such', hash: '1'.repeat(64) };
	const meshPart = '?upload=upload-001&part=0';
	const inputs = testInputs();
	const titleOf = (number: number) => `${inputs.pattern.name}, mold ${number}`;
	const hash = planHash(makePlan(inputs));
	const room = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };
	const act = { id: newActId(), seq: 2, event: room };
	const word = { decision: 'abandon', id: newActId(), seq: 3, reason: 'Cracked.' };
	const cases: Array<[string, number, Asked]> = [
		['GET /api/session', 200, {}],
		['DELETE /api/session', 204, { token: 'nobodys' }],
		['GET /api/openapi.json', 200, {}],
		['GET /api/schema/record.json', 200, {}],
		['POST /api/session', 201, { body: { personId: workerId, pin: '1357' } }],
		['POST /api/plan', 200, { body: inputs }],
		['GET /api/jobs', 200, {}],
		['POST /api/jobs', 201, { body: { id: 'job-00002', inputs, planHash: hash } }],
		['POST /api/jobs', 409, { body: { id: 'job-00001', inputs, planHash: hash } }],
		['POST /api/jobs', 409, { body: { title: titleOf(2), inputs, planHash: hash } }],
		['POST /api/jobs', 422, { body: { title: ' ', inputs, planHash: hash } }],
		['POST /api/jobs', 409, { body: { inputs, planHash: '0'.repeat(64) } }],
		['POST /api/jobs', 403, { token: tokens.apprentice, body: {} }],
		['GET /api/jobs/{id}', 200, {}],
		['GET /api/jobs/{id}', 404, { params: nowhere }],
		['GET /api/jobs/{id}/events', 200, {}],
		['GET /api/jobs/{id}/events', 404, { params: nowhere }],
		['GET /api/jobs/{id}/events', 422, { query: '?after=-1' }],
		['POST /api/jobs/{id}/events', 201, { body: act }],
		['POST /api/jobs/{id}/events', 200, { body: act }],
		['POST /api/jobs/{id}/events', 409, { body: { ...act, id: newActId() } }],
		['POST /api/jobs/{id}/events', 404, { body: act, params: nowhere }],
		['POST /api/acts', 200, { body: { acts: [{ ...act, jobId: 'job-00001' }] } }],
		['GET /api/jobs/{id}/live', 200, {}],
		['GET /api/jobs/{id}/live', 404, { params: nowhere }],
		['GET /api/jobs/{id}/record.json', 200, {}],
		['GET /api/jobs/{id}/record.json', 404, { params: nowhere }],
		['GET /api/live', 200, {}],
		['POST /api/meshes/parts', 201, { query: meshPart, body: 'solid a\nfacet\nendsolid a\n' }],
		['POST /api/meshes/parts', 422, { query: meshPart, body: '' }],
		['POST /api/meshes/parts', 403, { token: tokens.apprentice, query: meshPart }],
		['POST /api/meshes/parts', 413, { query: meshPart, isTooLarge: true }],
		['POST /api/meshes', 201, { body: { upload: 'upload-001', parts: 1 } }],
		['POST /api/meshes', 422, { body: { upload: 'upload-002', parts: 1 } }],
		['POST /api/meshes', 403, { token: tokens.apprentice, body: {} }],
		['GET /api/meshes/{hash}', 404, { params: nowhere }],
		['POST /api/photos', 201, { bytes: TINY_PNG }],
		['POST /api/photos', 422, { body: 'no photo' }],
		['POST /api/photos', 413, { isTooLarge: true }],
		['GET /api/photos/{hash}', 404, { params: nowhere }],
		['POST /api/jobs/{id}/sign', 409, { body: { ...word, seq: 9, personId: headId, pin: '2468' } }],
		[
			'POST /api/jobs/{id}/sign',
			404,
			{ body: { ...word, personId: headId, pin: '2468' }, params: nowhere }
		],
		['POST /api/jobs/{id}/sign', 201, { body: { ...word, personId: headId, pin: '2468' } }],
		['POST /api/jobs/{id}/sign', 200, { body: { ...word, personId: headId, pin: '2468' } }],
		['POST /api/jobs/{id}/sign', 403, { body: { ...word, personId: headId, pin: '0000' } }],
		['POST /api/session', 403, { body: { personId: headId, pin: '0000' } }],
		['POST /api/session', 429, { body: { personId: headId, pin: '0000' } }],
		['POST /api/jobs/{id}/sign', 429, { body: { ...word, personId: headId, pin: '0000' } }]
	];
	for (const [name, status, asked] of cases) {
		expect([name, await ask(name, { token, ...asked })]).toEqual([name, status]);
	}
	const saved = await savePhoto(db, { bytes: TINY_PNG });
	if (saved.status !== 'saved') throw new Error(saved.reason);
	const params = { hash: saved.hash };
	expect(await ask('GET /api/photos/{hash}', { token, params })).toBe(200);
	const mesh = createHash('sha256').update('solid a\nfacet\nendsolid a\n').digest('hex');
	expect(await ask('GET /api/meshes/{hash}', { token, params: { hash: mesh } })).toBe(200);
}, 60_000);

test('a device that is not registered is turned away where only those may sign in', async () => {
	await setOnlyKnownDevices(db, true);
	expect(await ask('POST /api/session', { body: { personId: workerId, pin: '1357' } })).toBe(403);
	await setOnlyKnownDevices(db, false);
});

test('one session has no more live streams than it may', async () => {
	const token = await startSession(db, workerId, new Date().toISOString());
	const open = Array.from({ length: MOST_STREAMS.session }, () =>
		ask('GET /api/live', { token, isLeftOpen: true })
	);
	expect(new Set(await Promise.all(open))).toEqual(new Set([200]));
	expect(await ask('GET /api/live', { token })).toBe(429);
	expect(await ask('GET /api/jobs/{id}/live', { token })).toBe(429);
	closeLive();
	expect(await ask('GET /api/live', { token })).toBe(200);
});

test('a store that refuses is said with its status', async () => {
	const token = tokens.worker;
	await sql`drop trigger event_no_update`.execute(db);
	// A mold that nobody has read yet: what was read once is kept in memory.
	const opening = { id: 'job-00009', plan: handPlan(), by: headId, content: {} };
	await createJob(db, { ...opening, at: new Date().toISOString() });
	await sql`update event set hash = ${'0'.repeat(64)} where job_id = 'job-00009'`.execute(db);
	const params = { id: 'job-00009' };
	expect(await ask('GET /api/jobs/{id}', { token, params })).toBe(503);
});

test('what was answered is what the document says, and the document says nothing else', () => {
	for (const { name, statuses } of operations) {
		const answered = [...(seen.get(name) ?? [])].filter((status) => !BENEATH.includes(status));
		const documented = statuses.filter((status) => !BENEATH.includes(status));
		expect([name, answered.toSorted()]).toEqual([name, documented.toSorted()]);
		const isWrite = /^(DELETE|POST) (?!\/api\/plan)/.test(name);
		const beneath = statuses.filter((status) => BENEATH.includes(status));
		expect([name, beneath]).toEqual([name, isWrite ? BENEATH : [500, 503]]);
	}
});
