import { expect, test } from 'vitest';
import { verifyChain } from '../../src/lib/core/log/chain';
import { fold } from '../../src/lib/core/process/job';
import { postAct } from '../../src/lib/server/act';
import { appendEvent, appendEvents, type Append } from '../../src/lib/server/append';
import { readEvents } from '../../src/lib/server/event-rows';
import { isDamaged } from '../../src/lib/server/job-file';
import { createJob, findJob, getJob, listJobs } from '../../src/lib/server/jobs.repository';
import { onAppended } from '../../src/lib/server/live';
import { addPerson } from '../../src/lib/server/people.repository';
import { exportRecord } from '../../src/lib/server/record';
import { handPlan } from '../fixtures/plan';
import { HELPED } from '../fixtures/bench-log';
import { actsOf, AT, CREW, storedJob } from '../fixtures/server-store';
import { newPlace, tamper, testStore } from '../fixtures/test-store';

/** A job with its first act not yet posted. */
async function openedJob() {
	const db = await testStore();
	const jobId = 'job-00001';
	const plan = handPlan();
	await createJob(db, { id: jobId, plan, by: CREW.supervisor, at: AT, content: {} });
	const acts = actsOf(plan, jobId, 'pattern').map(({ id, seq, event }): Append => ({
		jobId,
		id,
		seq,
		event,
		recordedAt: event.at
	}));
	const [first, second] = acts;
	if (!first || !second) throw new Error('the rehearsal has no acts');
	return { db, jobId, plan, first, second };
}

test('a whole job, opening to handover, is stored, verified and folds to the same state', async () => {
	const db = await testStore();
	const { jobId, plan, acts } = await storedJob(db, 'end');
	const log = await readEvents(db, jobId);
	expect(log).toHaveLength(acts.length + 1);
	expect(verifyChain(log)).toMatchObject({ ok: true, head: log.at(-1)?.hash });
	const job = await getJob(db, jobId);
	expect(job?.state.snapshot.value).toEqual(fold(plan, log).snapshot.value);
	expect(job?.state.snapshot.status).toBe('done');
});

test('the same act twice is one event', async () => {
	const { db, first } = await openedJob();
	const once = await appendEvent(db, first);
	const twice = await appendEvent(db, first);
	expect(once.status).toBe('appended');
	expect(twice).toEqual({ ...once, status: 'duplicate' });
	expect(await readEvents(db, first.jobId)).toHaveLength(2);
});

test('an act typed anew under the same id does not pass for the one that was written', async () => {
	const { db, first } = await openedJob();
	await appendEvent(db, first);
	const humidityPct = 61;
	const anew = { ...first, event: { ...first.event, humidityPct } as typeof first.event };
	expect(await appendEvent(db, anew)).toMatchObject({
		status: 'conflict',
		headSeq: 2,
		since: [{ seq: 2, event: first.event }]
	});
	const later = { ...first, event: { ...first.event, at: first.recordedAt } };
	expect(await appendEvent(db, later)).toMatchObject({ status: 'duplicate' });
});

test('after harm to somebody, only one who may sign says that work goes on', async () => {
	const { db, jobId } = await openedJob();
	const crew = { pin: '2468', name: 'Invented' } as const;
	const helper = await addPerson(db, { ...crew, role: 'apprentice' });
	const head = await addPerson(db, { ...crew, role: 'supervisor' });
	const reported = { type: 'trouble.reported', trouble: 'skin-contact', note: 'wrist' };
	await postAct(db, { jobId, id: 'harm', seq: 2, by: CREW.worker, event: reported });
	const mended = { type: 'trouble.mended', how: 'washed, looked at', wayBack: 'resume' };
	const act = { jobId, id: 'mended', seq: 3, event: mended };
	expect(await postAct(db, { ...act, by: helper.id })).toMatchObject({
		status: 'refused',
		reason: expect.stringMatching(/a supervisor/)
	});
	const event = { ...mended, ...HELPED, type: 'trouble.decided' };
	const decided = { ...act, by: head.id, event };
	expect(await postAct(db, decided)).toMatchObject({ status: 'refused' });
	expect(await postAct(db, { ...decided, isSigned: true })).toMatchObject({ status: 'appended' });
});

test('an act sent twice at the same moment is one event', async () => {
	const { db, first } = await openedJob();
	const answers = await Promise.all([1, 2, 3, 4].map(() => appendEvent(db, first)));
	expect(answers.map((a) => a.status).sort()).toEqual([
		'appended',
		'duplicate',
		'duplicate',
		'duplicate'
	]);
});

test('of two acts for the same place one wins, and the other is told where the job stands', async () => {
	const { db, first } = await openedJob();
	const acts = [first, { ...first, id: 'another-bench' }];
	const answers = await Promise.all(acts.map((act) => appendEvent(db, act)));
	// Which one wins is the database's affair.
	const won = answers.findIndex(({ status }) => status === 'appended');
	expect(answers[1 - won]).toMatchObject({
		status: 'conflict',
		headSeq: 2,
		since: [{ seq: 2, id: acts[won]?.id, event: first.event }],
		allowed: expect.arrayContaining(['room.read'])
	});
});

test('an act that comes before its turn is a conflict, and nothing is written', async () => {
	const { db, second } = await openedJob();
	expect(await appendEvent(db, second)).toMatchObject({
		status: 'conflict',
		headSeq: 1,
		since: []
	});
	expect(await readEvents(db, second.jobId)).toHaveLength(1);
});

test('an id of another job, or of another act, is refused', async () => {
	const { db, first, second } = await openedJob();
	await appendEvent(db, first);
	const other = await appendEvent(db, { ...second, id: first.id });
	expect(other).toMatchObject({
		status: 'refused',
		reason: expect.stringMatching(/another act of this job/)
	});

	const plan = handPlan();
	await createJob(db, { id: 'job-00002', plan, by: CREW.supervisor, at: AT, content: {} });
	const foreign = await appendEvent(db, { ...first, jobId: 'job-00002' });
	expect(foreign).toMatchObject({
		status: 'refused',
		reason: expect.stringMatching(/another job/)
	});
	expect(await appendEvent(db, { ...first, jobId: 'nowhere' })).toEqual({ status: 'no job' });
});

test('what the process does not take is refused with what it would take', async () => {
	const { db, first } = await openedJob();
	const event = {
		type: 'mold.opened',
		at: first.event.at,
		by: 'x',
		boardOff: true,
		wedgedEvenly: true
	} as const;
	const answer = await appendEvent(db, { ...first, event });
	expect(answer).toMatchObject({
		status: 'refused',
		allowed: expect.arrayContaining(['room.read'])
	});
	expect(await readEvents(db, first.jobId)).toHaveLength(1);
});

test('a time before the last act, or ahead of the server, is refused', async () => {
	const { db, first } = await openedJob();
	const early = { ...first, event: { ...first.event, at: '2026-03-02T13:59:59Z' } };
	expect(await appendEvent(db, early)).toMatchObject({
		reason: expect.stringMatching(/before the last act/)
	});
	const ahead = { ...first, recordedAt: AT, event: { ...first.event, at: '2026-03-02T14:00:31Z' } };
	expect(await appendEvent(db, ahead)).toMatchObject({
		reason: expect.stringMatching(/ahead of the server's clock/)
	});
});

test('an act without a time is not refused when the clock was set back', async () => {
	const { db, jobId } = await openedJob();
	// The job was opened in a year to come, as after a clock set back.
	await createJob(db, {
		id: 'job-ahead',
		plan: handPlan(),
		by: CREW.supervisor,
		at: '2199-01-01T00:00:00Z',
		content: {}
	});
	const act = {
		id: 'act-00001',
		seq: 2,
		by: CREW.worker,
		event: { type: 'trouble.reported', trouble: 'spill', note: 'A cup fell over.' }
	};
	expect(await postAct(db, { ...act, jobId: 'job-ahead' })).toMatchObject({
		stored: { event: { at: '2199-01-01T00:00:00Z' } }
	});
	expect(await postAct(db, { ...act, id: 'act-00002', jobId })).toMatchObject({
		status: 'appended'
	});
});

test('a signature, or a second opening, cannot be posted as a plain act', async () => {
	const { db, first } = await openedJob();
	const base = { at: first.event.at, by: CREW.supervisor };
	const signed = { type: 'hold.signed', hold: 'readyToCoat', ...base } as const;
	expect(await appendEvent(db, { ...first, event: signed })).toMatchObject({
		reason: expect.stringMatching(/with a PIN/)
	});
	const log = await readEvents(db, first.jobId);
	const opening = log[0]?.event;
	if (!opening) throw new Error('no opening');
	expect(await appendEvent(db, { ...first, event: { ...opening, ...base } })).toMatchObject({
		reason: expect.stringMatching(/opened once/)
	});
});

test('what is no act is told where, what it is and what would be accepted', async () => {
	const { db, first } = await openedJob();
	const answers = await appendEvents(db, first.jobId, [
		first,
		{ ...first, id: 'no-act', seq: 3, event: { ...first.event, temperatureC: 'warm' } as never },
		{ ...first, id: 'behind-it', seq: 4 }
	]);
	expect(answers).toEqual([
		expect.objectContaining({ status: 'appended' }),
		{
			status: 'unfit',
			errors: [{ path: 'temperatureC', message: 'temperatureC is “warm”; accepted: a number.' }]
		},
		{ status: 'held' }
	]);
	const unknown = { ...first, event: { ...first.event, type: 'room.smelled' } as never };
	expect(await appendEvent(db, unknown)).toMatchObject({
		errors: [
			{
				path: 'type',
				message: expect.stringMatching(/^type is “room.smelled”; accepted: job.opened; /)
			}
		]
	});
});

test('half a character is refused before it reaches the hash', async () => {
	const { db, first } = await openedJob();
	const event = {
		type: 'trouble.reported',
		trouble: 'spill',
		note: 'a\ud800b',
		at: first.event.at,
		by: 'x'
	} as const;
	expect(await appendEvent(db, { ...first, event })).toMatchObject({
		reason: expect.stringMatching(/half a character/)
	});
});

test('opening a job twice under one id opens it once, and never with another plan', async () => {
	const { db, jobId, plan } = await openedJob();
	const again = { id: jobId, plan, by: CREW.worker, at: AT, content: {} };
	expect(await createJob(db, again)).toBe(jobId);
	expect(await listJobs(db)).toHaveLength(1);
	const other = { ...again, plan: handPlan({ detail: true }) };
	await expect(createJob(db, other)).rejects.toThrow(/another plan/);
});

test('open screens are told of each append, after it is written', async () => {
	const { db, first } = await openedJob();
	const heard: number[] = [];
	const off = onAppended(({ seq }) => heard.push(seq));
	await appendEvent(db, first);
	await appendEvent(db, first);
	off();
	expect(heard).toEqual([2]);
});

test('a damaged job is shown as damaged, takes no more acts and hides no other job', async () => {
	const place = await newPlace();
	const db = await testStore(place);
	const { acts } = await storedJob(db, 'frame', 'job-broken');
	await storedJob(db, 'pattern', 'job-whole');
	await tamper(
		db,
		`update event set event = replace(event, 'true', 'false') where job_id = 'job-broken' and seq = 5`
	);

	// A server that starts afresh has nothing folded yet.
	const fresh = await testStore(place);
	const lines = await listJobs(fresh);
	expect(lines.map(({ id, state }) => [id, state !== null]).sort()).toEqual([
		['job-broken', false],
		['job-whole', true]
	]);
	const broken = await findJob(fresh, 'job-broken');
	expect(broken && isDamaged(broken) && broken.damage).toMatch(/event 5 was altered/);
	await expect(getJob(fresh, 'job-broken')).rejects.toThrow(/record is damaged/);
	const last = acts.at(-1);
	if (!last) throw new Error('no acts');
	const next = {
		jobId: 'job-broken',
		id: 'one-more',
		seq: last.seq + 1,
		event: last.event,
		recordedAt: AT
	};
	expect(await appendEvent(fresh, next)).toMatchObject({
		reason: expect.stringMatching(/damaged/)
	});
});

test('an entry that no longer is JSON damages its own job, and no other', async () => {
	const place = await newPlace();
	const db = await testStore(place);
	await storedJob(db, 'pattern', 'job-broken');
	await storedJob(db, 'pattern', 'job-whole');
	await tamper(db, `update event set event = '{' where job_id = 'job-broken' and seq = 3`);
	const fresh = await testStore(place);
	const lines = await listJobs(fresh);
	expect(lines.map(({ id, damage }) => [id, damage]).sort()).toEqual([
		['job-broken', expect.stringMatching(/no longer be read/)],
		['job-whole', null]
	]);
	await expect(exportRecord(fresh, 'job-broken', AT)).rejects.toThrow(/no longer be read/);
});
