import fc from 'fast-check';
import { newActId } from '../../src/lib/server/act-id';
import { testInputs, testSheet } from '../fixtures/materials';
import { handPlan } from '../fixtures/plan';
import { expect, testOnOneServer } from './app';
import { seedShop, signIn, SUPERVISOR_PIN, WORKER_PIN } from './seeded-shop';

/** `npm run torture` asks for 100,000. */
const REQUESTS = Number(process.env.GLOVEWRIGHT_FUZZ ?? 320);
/** Sent at once, as from a busy shop. */
const AT_ONCE = 16;
/** What a stack, a source path or a database's own words look like in an answer. */
const LEAKS = /\n\s+at |node_modules|\.(js|ts|svelte):\d+|SQLITE_|SqliteError|TypeError|ZodError/;

/** What the seeded job is called. */
const { title } = handPlan();

const test = testOnOneServer(async ({ url, dataDir }) => {
	const { supervisor, worker, jobIds } = await seedShop(dataDir);
	return {
		jobId: jobIds[0] ?? '',
		supervisor,
		cookie: await signIn(url, worker.id, WORKER_PIN),
		ownCookie: await signIn(url, supervisor.id, SUPERVISOR_PIN)
	};
});

const nasty = fc.oneof(
	fc.constantFrom<unknown>(
		null,
		'',
		' ',
		-1,
		0,
		-0,
		1e308,
		5e-324,
		1e21,
		'NaN',
		'1e999',
		'__proto__',
		'\u0000',
		'\ud800',
		'<script>alert(1)</script>',
		'../../etc/passwd',
		'x'.repeat(10_000),
		[],
		{},
		true
	),
	fc.jsonValue({ maxDepth: 2 }),
	fc.string({ unit: 'binary', maxLength: 40 }),
	fc.double()
);

/** The same value with a few of its leaves, drawn by `picks`, put to something else. */
function mutated(value: unknown, picks: ReadonlyArray<readonly [number, unknown]>): unknown {
	const copy: unknown = structuredClone(value);
	for (const [pick, put] of picks) {
		const spots: Array<[object, string]> = [];
		const walk = (node: unknown) => {
			if (typeof node !== 'object' || node === null) return;
			for (const [key, child] of Object.entries(node)) {
				spots.push([node, key]);
				walk(child);
			}
		};
		walk(copy);
		const spot = spots[Math.floor(pick * spots.length)];
		if (spot) Reflect.set(spot[0], spot[1], put);
	}
	return copy;
}

type Asked = [{ path: string; type: string | null; body: string | null }, string];

const picks = fc.array(fc.tuple(fc.double({ min: 0, max: 0.999, noNaN: true }), nasty), {
	maxLength: 3
});
const act = { type: 'room.read', temperatureC: 22, humidityPct: 48, extractionOn: true };

/** Fields of forms as a browser posts them. */
const FORMS: Record<string, Record<string, string>> = {
	'/setup': { name: 'Shop', zone: 'UTC', units: 'SI', owner: 'A', pin: '1234' },
	'/start': {},
	'/sign-in': { person: 'nobody', pin: '1234', next: '//elsewhere.example' },
	'/patterns/new': {
		name: 'Block',
		material: 'plaster',
		'body.kind': 'solids',
		'body.solids.0.shape': 'box',
		'body.solids.0.lengthMm': '10',
		partsWanted: '2'
	},
	'/materials/new?/save': { name: 'Wax', kind: 'wax', 'parts.0.part': 'A', 'kits.0.massG': '100' },
	'/materials/none?/retire': {},
	'/jobs/new?/accept&pattern=none': { hash: '0'.repeat(64), startAt: '2026-01-01T00:00:00Z' },
	'/jobs/JOB/bench?/act': { type: 'room.read', seq: '1', id: newActId(), temperatureC: '22' },
	'/jobs/JOB/sign': {
		decision: 'sign',
		seq: '1',
		id: newActId(),
		hold: 'readyToCoat',
		pin: '1'
	},
	'/people?/add': { name: 'Neu', role: 'apprentice', pin: '1234', pinAgain: '1234', ownPin: '0' },
	'/people?/pin': { person: 'none', pin: '1234' },
	'/people?/retire': { person: 'none' },
	'/shop': { name: 'Shop' },
	'/shop?/save': { name: 'Shop', zone: 'nowhere' }
};

/** What must not be in an answer, whoever asks; null when nothing is wrong. No step of the report: 100,000 of those take an hour. */
function faultOf(status: number, text: string, isKnown: boolean): string | null {
	if (status >= 500) return 'which is no answer';
	if (LEAKS.test(text.slice(0, 100_000))) return 'with what only the log should say';
	// A stranger is given no job, whatever the address looks like.
	return !isKnown && text.includes(title) ? 'with a job, to a stranger' : null;
}

test(`${REQUESTS} requests to the API and the forms: no 5xx, no stack, nothing for strangers`, async ({
	app,
	filled: { jobId, supervisor, cookie, ownCookie }
}) => {
	// 100,000 take some ten minutes.
	test.setTimeout(240_000 + REQUESTS * 40);
	const BODIES: Array<[string, unknown]> = [
		['/api/plan', testInputs()],
		['/api/jobs', { inputs: testInputs(), planHash: '0'.repeat(64) }],
		['/api/jobs/JOB/events', { id: newActId(), seq: 2, event: act }],
		[
			'/api/jobs/JOB/events',
			{
				id: newActId(),
				seq: 2,
				event: { type: 'cup.weighed', massesG: { A: 1, B: 2 }, lots: { A: 'a', B: 'b' } }
			}
		],
		['/api/acts', { acts: [{ jobId, id: newActId(), seq: 2, event: act }] }],
		[
			'/api/jobs/JOB/sign',
			{
				id: newActId(),
				seq: 2,
				supervisorId: supervisor.id,
				pin: '0000',
				decision: 'sign',
				hold: 'readyToCoat'
			}
		],
		['/api/session', { personId: supervisor.id, pin: '0000' }],
		['/api/photos', testSheet('brush-80')]
	];
	const json = fc.tuple(fc.constantFrom(...BODIES), picks).map(([[path, body], put]) => ({
		path,
		type: 'application/json',
		body: JSON.stringify(mutated(body, put)) ?? ''
	}));
	const raw = fc.record({
		path: fc.constantFrom(...BODIES.map(([path]) => path), ...Object.keys(FORMS)),
		type: fc.constantFrom('application/json', 'image/png', 'text/plain', 'multipart/form-data'),
		body: fc.string({ unit: 'binary', maxLength: 200 })
	});
	const form = fc.tuple(fc.constantFrom(...Object.keys(FORMS)), picks).map(([path, put]) => {
		const fields = mutated(FORMS[path], put) as Record<string, unknown>;
		const pairs = Object.entries(fields).map(([key, value]) => [
			key,
			typeof value === 'string' ? value.toWellFormed() : (JSON.stringify(value) ?? '')
		]);
		return {
			path,
			type: 'application/x-www-form-urlencoded',
			body: new URLSearchParams(pairs).toString()
		};
	});
	const get = fc
		.tuple(
			fc.constantFrom(
				'/api/jobs/',
				'/jobs/',
				'/read/steps/',
				'/patterns/',
				'/jobs/new?pattern=',
				'/api/photos/',
				'/board?q=',
				'/api/jobs/JOB/events?after='
			),
			fc
				.string({ unit: 'binary', maxLength: 30 })
				.map((text) => encodeURIComponent(text.toWellFormed()))
		)
		.map(([path, tail]) => ({ path: path + tail, type: null, body: null }));

	const statuses = new Map<number, number>();
	const requests = fc.tuple(
		fc.oneof(json, json, form, form, raw, get),
		fc.constantFrom(cookie, ownCookie, '')
	);
	const ask = async ([{ path, type, body }, who]: Asked) => {
		const answer = await fetch(app.url + path.replace('JOB', jobId), {
			method: body === null ? 'GET' : 'POST',
			headers: {
				origin: app.url,
				...(who ? { cookie: who } : {}),
				...(type ? { 'content-type': type } : {})
			},
			...(body === null ? {} : { body }),
			redirect: 'manual'
		});
		const text = await answer.text();
		statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1);
		const fault = faultOf(answer.status, text, who !== '');
		if (fault)
			throw new Error(`${path} answered ${answer.status}, ${fault}: ${text.slice(0, 300)}`);
	};
	await fc.assert(
		fc.asyncProperty(
			fc.array(requests, { minLength: AT_ONCE, maxLength: AT_ONCE }),
			async (asked) => void (await Promise.all(asked.map(ask)))
		),
		{ numRuns: Math.ceil(REQUESTS / AT_ONCE), endOnFailure: true }
	);
	// A fuzz that is turned away at the door proves nothing.
	expect(statuses.size, JSON.stringify([...statuses])).toBeGreaterThan(4);
	expect((statuses.get(422) ?? 0) + (statuses.get(200) ?? 0)).toBeGreaterThan(30);
	const health = await fetch(`${app.url}/healthz`);
	expect(health.status).toBe(200);
});
