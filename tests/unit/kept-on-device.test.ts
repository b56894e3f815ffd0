import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { ProcessEvent } from '../../src/lib/core/process/events';
import { keptActs } from '../../src/lib/device/keep/kept-acts';
import { openKept, type KeptDatabase } from '../../src/lib/device/keep/kept-database';
import { KeptPhotos } from '../../src/lib/device/keep/kept-photos';
import { postActs } from '../../src/lib/device/keep/post-acts';
import type { WaitingAct } from '../../src/lib/device/keep/waiting-act';

const AT = '2026-03-02T14:00:00Z';
let db: KeptDatabase;
let photos: KeptPhotos;

beforeEach(async () => {
	globalThis.indexedDB = new IDBFactory();
	db = await openKept();
	photos = new KeptPhotos(db);
});
afterEach(() => {
	db.close();
	vi.unstubAllGlobals();
});

function act(jobId: string, seq: number, hashes: string[] = []): WaitingAct {
	const event: ProcessEvent = {
		type: 'cup.mixed',
		at: AT,
		by: 'yusuf',
		...(hashes.length > 0 ? { photos: hashes } : {})
	};
	const rest = { title: 'A mold', byName: 'Yusuf', label: 'Mixed', refusal: null };
	return { id: `${jobId}-${seq}`, jobId, seq, event, ...rest };
}

interface Sent {
	path: string;
	body: unknown;
}

/** A server in place of the real one: what it is sent, and what it answers to each. */
function serverThat(answer: (sent: Sent) => [status: number, body: object] | 'nothing'): Sent[] {
	const all: Sent[] = [];
	vi.stubGlobal('fetch', async (path: string, { body }: { body: string | Blob }) => {
		const sent = { path, body: typeof body === 'string' ? (JSON.parse(body) as unknown) : body };
		all.push(sent);
		const said = answer(sent);
		if (said === 'nothing') throw new TypeError('no line');
		return new Response(JSON.stringify(said[1]), { status: said[0] });
	});
	return all;
}
const idsIn = ({ body }: Sent) => (body as { acts: WaitingAct[] }).acts.map(({ id }) => id);
const written = ({ body }: Sent): [number, object] => [
	200,
	{ answers: (body as { acts: object[] }).acts.map(() => ({ status: 201, stored: {} })) }
];

describe('photos that wait with their acts', () => {
	const photo = () => new Blob(['a picture'], { type: 'image/jpeg' });

	test('go with the act that names them last', async () => {
		const hash = await photos.keep(photo());
		const acts = keptActs(db);
		await acts.put(act('a', 5, [hash]));
		await acts.put(act('b', 3, [hash]));
		await acts.drop('a-5');
		expect(await db.count('photos')).toBe(1);
		await acts.drop('b-3');
		expect(await db.count('photos')).toBe(0);
		expect(await acts.all()).toEqual([]);
	});

	test('are sent before it, and it names them as the server does', async () => {
		const hash = await photos.keep(photo());
		const sent = serverThat((s) =>
			s.path === '/api/photos' ? [201, { hash: 'f'.repeat(64) }] : written(s)
		);
		expect(await postActs([act('a', 5, [hash])], photos)).toEqual([{ status: 'written' }]);
		expect(sent.map(({ path }) => path)).toEqual(['/api/photos', '/api/acts']);
		expect(sent[1]?.body).toMatchObject({ acts: [{ event: { photos: ['f'.repeat(64)] } }] });
		// Still here: an act sent again after a lost answer must name the same photo.
		expect(await db.count('photos')).toBe(1);
	});

	test('that do not get through hold their act and what follows it, not other molds', async () => {
		const hash = await photos.keep(photo());
		const sent = serverThat((s) => (s.path === '/api/photos' ? 'nothing' : written(s)));
		const posted = await postActs([act('a', 5, [hash]), act('a', 6), act('b', 3)], photos);
		expect(posted.map(({ status }) => status)).toEqual(['no answer', 'held', 'written']);
		expect(sent.slice(1).map(idsIn)).toEqual([['b-3']]);
	});

	test('all or none are named anew in a form', async () => {
		const hash = await photos.keep(photo());
		serverThat(() => [201, { hash: 'f'.repeat(64) }]);
		expect(await photos.sendAll([hash, 'e'.repeat(64)])).toEqual(['f'.repeat(64), 'e'.repeat(64)]);
		serverThat(() => 'nothing');
		expect(await photos.sendAll([hash])).toBeNull();
	});
});

describe('acts as they are sent', () => {
	test('go together, with what this device’s clock says', async () => {
		const sent = serverThat(written);
		await postActs([act('a', 5), act('a', 6), act('b', 3)], photos);
		expect(sent.map(idsIn)).toEqual([['a-5', 'a-6', 'b-3']]);
		const [first] = (sent[0]?.body as { acts: WaitingAct[] }).acts;
		expect(first?.event.at).toBe(AT);
		expect(Math.abs(Date.parse(first?.event.sentAt ?? '') - Date.now())).toBeLessThan(60_000);
	});

	test('each have their own answer', async () => {
		const conflict = { code: 'conflict', detail: 'Somebody else was faster.' };
		const errors = [{ message: 'too long' }, { message: 'lot is missing' }];
		const unfit = { code: 'invalid', detail: 'note: too long. And 1 more.', errors };
		serverThat(() => [
			200,
			{
				answers: [
					{ status: 200, stored: {} },
					{ status: 409, problem: conflict },
					{ status: 409, problem: { code: 'held', detail: '' } },
					{ status: 422, problem: unfit },
					{ status: 507, problem: { code: 'disk-full', detail: '' } },
					{ status: 403, problem: { code: 'not-the-doer', detail: '' } }
				]
			}
		]);
		const acts = [act('a', 5), act('a', 6), act('a', 7), act('b', 3), act('c', 3), act('d', 3)];
		expect(await postActs(acts, photos)).toEqual([
			{ status: 'written' },
			{ status: 'not taken', reason: expect.stringMatching(/^Somebody else entered/) },
			{ status: 'held' },
			{ status: 'not taken', reason: 'note: too long. And 1 more. lot is missing' },
			{ status: 'no answer' },
			{ status: 'sign in' }
		]);
	});

	test.each([
		[401, 'sign in'],
		[403, 'sign in'],
		[429, 'no answer'],
		[503, 'no answer']
	])('when all are answered %i, each is told: %s', async (status, told) => {
		serverThat(() => [status, {}]);
		const posted = await postActs([act('a', 5), act('b', 3)], photos);
		expect(posted.map((answer) => answer.status)).toEqual([told, told]);
	});

	test('one that upsets the whole request is found, and holds only its own mold', async () => {
		const sent = serverThat((s) =>
			idsIn(s).includes('a-5') ? [422, { code: 'invalid', detail: 'acts.0.id: no.' }] : written(s)
		);
		const posted = await postActs([act('a', 5), act('a', 6), act('b', 3)], photos);
		expect(posted).toEqual([
			{ status: 'not taken', reason: 'acts.0.id: no.' },
			{ status: 'held' },
			{ status: 'written' }
		]);
		expect(sent.map(idsIn)).toEqual([['a-5', 'a-6', 'b-3'], ['a-5'], ['b-3']]);
	});

	test('a request that fails is told apart from a server that is away', async () => {
		const sent = serverThat((s) => (s.path === '/healthz' ? [200, {}] : 'nothing'));
		expect(await postActs([act('a', 5)], photos)).toEqual([{ status: 'no answer' }]);
		expect(sent.map(({ path }) => path)).toEqual(['/api/acts', '/healthz']);
		serverThat(() => 'nothing');
		expect(await postActs([act('a', 5)], photos)).toEqual([{ status: 'no line' }]);
	});

	test('an answer that cannot be read is none', async () => {
		serverThat(() => [200, { nothing: true }]);
		expect(await postActs([act('a', 5)], photos)).toEqual([{ status: 'no answer' }]);
	});
});
