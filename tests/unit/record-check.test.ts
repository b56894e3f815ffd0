import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkRecord } from '$lib/screen/record/check-record';
import { finishOfJob } from '$lib/screen/record/finish-of-job';
import { offText } from '$lib/screen/record/record-reader';
import { recordTime } from '$lib/screen/record/record-time';
import type { Db } from '$lib/server/database';
import { seedDemo } from '$lib/server/demo';
import type { JobLine } from '$lib/server/job-line';
import { listJobs } from '$lib/server/jobs.repository';
import { exportRecord } from '$lib/server/record';
import type { JobRecord } from '$lib/server/record-schema';
import { newPlace, openPlace } from '../fixtures/test-store';

const AT = '2026-11-25T16:20:00.000Z';

describe('a record checked on the device', () => {
	let db: Db;
	let done: JobLine;
	let record: JobRecord;

	beforeAll(async () => {
		db = await openPlace(await newPlace());
		await seedDemo(db, AT);
		const jobs = await listJobs(db);
		const found = jobs.find(({ state }) => state && finishOfJob(state).handedOver);
		if (!found) throw new Error('the demo has no mold that was handed over');
		done = found;
		const exported = await exportRecord(db, done.id, AT);
		if (!exported) throw new Error('the record could not be exported');
		record = exported;
	}, 60_000);
	afterAll(() => db.destroy());

	const faults = (changed: JobRecord) =>
		checkRecord(changed).checks.map(({ fault }) => fault !== null);

	test('agrees with what was written, also after a journey through JSON', () => {
		expect(faults(record)).toEqual([false, false, false, false]);
		const copy = JSON.parse(JSON.stringify(record)) as JobRecord;
		expect(checkRecord(copy).head).toBe(record.headHash);
	});

	test('finds a changed plan, a changed entry, a missing entry and a changed name', () => {
		const copy = () => structuredClone(record);
		const plan = copy();
		plan.plan.title += '!';
		expect(faults(plan)).toEqual([true, false, false, true]);

		const entry = copy();
		const weighed = entry.events.find(({ event }) => event.type === 'cup.weighed')?.event;
		if (weighed?.type !== 'cup.weighed') throw new Error('no cup was weighed');
		const [part] = Object.keys(weighed.massesG);
		weighed.massesG[part ?? ''] = 1;
		expect(faults(entry)).toEqual([false, true, true, true]);

		const short = copy();
		short.events.pop();
		expect(faults(short)).toEqual([false, false, true, true]);

		const named = copy();
		named.people = Object.fromEntries(Object.keys(named.people).map((id) => [id, 'Other']));
		expect(faults(named)).toEqual([false, false, false, true]);
	});

	test('the card for the user has mark, storage, repair and wear', () => {
		if (!done.state) throw new Error('the record is damaged');
		const finish = finishOfJob(done.state);
		expect(finish.mark).toBeTruthy();
		expect(finish.handedOver?.storage).toBeTruthy();
		expect(finish.pours[0]?.released?.result).toBe('good');
	});
});

describe('how a record reads', () => {
	test('an instant by the shop’s clock, with its year', () => {
		expect(recordTime('2026-03-08T07:59:00Z', 'America/Chicago')).toBe('Mar 8, 2026, 01:59');
		expect(recordTime('2026-03-08T08:01:00Z', 'America/Chicago')).toBe('Mar 8, 2026, 03:01');
	});

	test.each([
		[0.0004, '0%'],
		[0.0312, '+3.1%'],
		[-0.08, '−8%'],
		[null, '—']
	])('%s off is %s', (fraction, text) => expect(offText(fraction)).toBe(text));
});
