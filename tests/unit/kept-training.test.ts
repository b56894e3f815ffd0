import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openKept, type KeptDatabase } from '../../src/lib/device/keep/kept-database';
import type { KeptJob } from '../../src/lib/device/keep/kept-job';
import { keptUpToDate } from '../../src/lib/device/keep/kept-server';

const AT = '2026-03-02T14:00:00.000Z';
const SOON = '2026-03-02T14:10:00.000Z';
const LATER = '2031-03-02T14:00:00.000Z';
let db: KeptDatabase;

beforeEach(async () => {
	globalThis.indexedDB = new IDBFactory();
	db = await openKept();
});
afterEach(() => {
	db.close();
	vi.unstubAllGlobals();
});

/** Which addresses are asked when a mold is kept up that was read whole ten minutes ago. */
async function askedFor(first: KeptJob['training'], then: KeptJob['training'] = first) {
	const asked: string[] = [];
	let training = first;
	vi.stubGlobal('fetch', async (address: string) => {
		asked.push(address);
		const isWhole = address.endsWith('/kept');
		const job = { jobId: 'job-1', log: [], names: {}, texts: { lang: 'en' }, training };
		return Response.json(isWhole ? job : { headSeq: 0, events: [] });
	});
	const keep = (at: string) =>
		keptUpToDate(db, { jobId: 'job-1', lang: 'en', viewerId: 'ben', at });
	await keep(AT);
	training = then;
	asked.length = 0;
	const kept = await keep(SOON);
	return { asked, training: kept?.training };
}

test('a training passed a moment ago is known before the line drops', async () => {
	const { training } = await askedFor({}, { ben: LATER });
	expect(training).toEqual({ ben: LATER });
	expect((await askedFor({ ben: SOON }, { ben: LATER })).training).toEqual({ ben: LATER });
	expect((await askedFor({ dee: LATER }, { ben: LATER })).training).toEqual({ ben: LATER });
});

test.each([[null], [{ ben: LATER }]])(
	'nothing is read anew for %j but the log',
	async (training) => {
		const { asked } = await askedFor(training);
		expect(asked).toEqual([expect.stringContaining('/events?after=')]);
	}
);
