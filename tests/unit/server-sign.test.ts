import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { contextOf } from '../../src/lib/core/process/job';
import { newActId } from '../../src/lib/server/act-id';
import { postAct } from '../../src/lib/server/act';
import { appendAnswer } from '../../src/lib/server/append-answer';
import { gateOf } from '../../src/lib/server/gate';
import { createJob, getJob } from '../../src/lib/server/jobs.repository';
import { chooseOwnPin } from '../../src/lib/server/own-pin';
import { addPerson, getPerson, setPin, type Role } from '../../src/lib/server/people.repository';
import { TINY_PNG as PNG } from '../fixtures/filled-shop';
import { savePhoto } from '../../src/lib/server/photos';
import { signatureSchema, signJob, type Signature } from '../../src/lib/server/sign';
import { signFromForm } from '../../src/lib/server/sign-form';
import { handPlan } from '../fixtures/plan';
import { AT, storedJob } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const address = '192.0.2.1';

async function shop() {
	const db = await testStore();
	const hire = (name: string, role: Role, pin: string, by?: string) =>
		addPerson(db, { name, role, pin }, AT, by);
	const ada = await hire('Ada Quill', 'supervisor', '2468');
	const ben = await hire('Ben Marsh', 'mold maker', '1357');
	const cy = await hire('Cy Tarn', 'mold maker', '8642');
	const jobId = 'job-00001';
	await createJob(db, { id: jobId, plan: handPlan(), by: ada.id, at: AT, content: {} });
	const act = (seq: number, by: string, event: Record<string, unknown>) =>
		postAct(db, { jobId, id: `act-${seq}-${by}`, seq, by, event });
	return { db, jobId, ada, ben, cy, hire, act };
}

const abandon = (seq: number, personId: string, pin: string): Signature =>
	signatureSchema.parse({
		decision: 'abandon',
		id: newActId(),
		seq,
		personId,
		pin,
		reason: 'The board has cracked.'
	});

test('a mold is abandoned with a PIN, by who has it in hand or who may sign, and by nobody else', async () => {
	const { db, jobId, ada, ben, cy, act } = await shop();
	const taken = await act(2, ben.id, { type: 'job.takenOver' });
	expect(taken.status).toBe('appended');
	const plain = await act(3, ben.id, { type: 'job.abandoned', reason: 'No more.' });
	expect(plain).toMatchObject({ status: 'refused', reason: expect.stringMatching(/PIN/) });

	const sign = (signature: Signature) => signJob(db, { jobId, signature, address });
	expect(await sign(abandon(3, ben.id, '0000'))).toMatchObject({ status: 'wrong PIN' });
	expect(await sign(abandon(3, cy.id, '8642'))).toMatchObject({
		status: 'refused',
		reason: expect.stringMatching(/in hand/)
	});
	expect((await getJob(db, jobId))?.headSeq).toBe(2);
	expect(await sign(abandon(3, ben.id, '1357'))).toMatchObject({
		status: 'appended',
		stored: { event: { type: 'job.abandoned', by: ben.id, reason: 'The board has cracked.' } }
	});

	await createJob(db, { id: 'job-00002', plan: handPlan(), by: ada.id, at: AT, content: {} });
	const other = { jobId: 'job-00002', address };
	const nobodys = abandon(2, cy.id, '8642');
	expect(await signJob(db, { ...other, signature: nobodys })).toMatchObject({ status: 'refused' });
	const heads = abandon(2, ada.id, '2468');
	expect(await signJob(db, { ...other, signature: heads })).toMatchObject({ status: 'appended' });
});

test('an apprentice does not take a mold over and give it up', async () => {
	const { db, jobId, hire, act } = await shop();
	const dee = await hire('Dee Marlow', 'apprentice', '9753');
	expect((await act(2, dee.id, { type: 'job.takenOver' })).status).toBe('appended');
	const answer = await signJob(db, { jobId, signature: abandon(3, dee.id, '9753'), address });
	expect(answer).toMatchObject({ status: 'refused', reason: expect.stringMatching(/supervisor/) });
});

test('abandoning without a reason is not taken', () => {
	const { reason, ...rest } = abandon(2, 'ada', '2468') as { reason: string };
	expect(reason).not.toBe('');
	for (const blank of [rest, { ...rest, reason: '   ' }]) {
		expect(signatureSchema.safeParse(blank).success).toBe(false);
	}
});

test('a PIN that somebody else gave signs nothing, until its owner has chosen their own', async () => {
	const { db, ada, hire } = await shop();
	const dee = await hire('Dee Holm', 'supervisor', '1122', ada.id);
	const { jobId } = await storedJob(
		db,
		(c) => c.hold !== null && c.holdRequestedAt !== null,
		'job-hold'
	);
	const job = await getJob(db, jobId);
	if (!job) throw new Error('no job');
	const word = (pin: string) =>
		signJob(db, {
			jobId,
			address,
			signature: signatureSchema.parse({
				decision: 'sign',
				id: newActId(),
				seq: job.headSeq + 1,
				supervisorId: dee.id,
				pin,
				hold: contextOf(job.state).hold
			})
		});
	const given = { status: 'may not sign', reason: expect.stringMatching(/choose your own/) };
	expect(await word('1122')).toMatchObject(given);
	const choose = (pin: string, newPin: string) =>
		chooseOwnPin(db, { personId: dee.id, pin, newPin, address, at: AT });
	expect(await choose('1122', '1122')).toEqual({ status: 'same PIN' });
	expect(await choose('9999', '3344')).toMatchObject({ status: 'wrong PIN' });
	expect(await word('1122')).toMatchObject(given);
	expect(await choose('1122', '3344')).toEqual({ status: 'chosen' });
	expect(await word('3344')).toMatchObject({ status: 'appended' });

	await setPin(db, dee.id, '5566', { by: ada.id, at: AT });
	expect(await getPerson(db, dee.id)).toMatchObject({ pinGivenBy: ada.id, pinSetAt: AT });
	expect(await word('5566')).toMatchObject(given);
	// Twelve PINs are hashed here, each made to take its time.
}, 60_000);

test('with a given PIN every page leads to choosing one, and the API says so', () => {
	const has = { shop: true, person: true, ownPin: false };
	for (const path of [
		'/board',
		'/people',
		'/refresh/isocyanate',
		'/jobs/1/sign',
		'/api/jobs',
		'/new-pinned'
	]) {
		expect([path, gateOf(path, has)]).toEqual([path, 'new pin']);
		expect([path, gateOf(path, { ...has, ownPin: true })]).toEqual([path, 'pass']);
	}
	for (const path of ['/new-pin', '/sign-out', '/sign-in', '/read', '/api/session']) {
		expect([path, gateOf(path, has)]).toEqual([path, 'pass']);
	}
	expect(gateOf('/new-pin', { ...has, person: false })).toBe('sign in');
	for (const shop of [true, false]) {
		const visitor = { shop, person: false, ownPin: true };
		expect(gateOf('/refresh/isocyanate', visitor)).toBe('pass');
	}
});

test('an act that names a photo the store does not have is refused by its field', async () => {
	const { db, jobId, ben, act } = await shop();
	const hash = createHash('sha256').update(PNG).digest('hex');
	const spill = (...photos: string[]) => ({
		type: 'trouble.reported',
		trouble: 'spill',
		note: 'A cup fell over.',
		photos
	});
	await savePhoto(db, { bytes: PNG });
	const refused = await act(2, ben.id, spill(hash, '0'.repeat(64)));
	expect(refused).toMatchObject({ status: 'refused', field: 'photos.1' });
	const answer = appendAnswer(refused);
	expect([answer.status, await answer.json()]).toMatchObject([
		422,
		{ code: 'invalid', errors: [{ path: 'photos.1', message: expect.stringMatching(/store/) }] }
	]);
	expect((await getJob(db, jobId))?.headSeq).toBe(1);
	expect((await act(2, ben.id, spill(hash))).status).toBe('appended');
});

test('a trouble that hurt somebody is ended on the signing page only with every answer, and all of them are kept', async () => {
	const { db, jobId, ben, ada, act } = await shop();
	await act(2, ben.id, { type: 'trouble.reported', trouble: 'cut' });
	const send = (fields: Record<string, string>) => {
		const form = new FormData();
		const sent = {
			id: newActId(),
			seq: '2',
			decision: 'decide trouble',
			asked: 'firstAidGiven seenBy sdsTaken',
			wayBack: 'resume',
			words: 'Dressed, works on with the other hand.',
			supervisorId: ada.id,
			pin: '2468',
			...fields
		};
		for (const [name, value] of Object.entries(sent)) form.set(name, value);
		return signFromForm(db, { jobId, zone: 'UTC', address, form });
	};
	const refused = await send({ seenBy: 'the first-aider' });
	expect(refused).toMatchObject({
		status: 422,
		data: {
			answers: { seenBy: 'the first-aider' },
			problems: [expect.stringContaining('first aid'), expect.stringContaining('SDS')]
		}
	});
	// A page that asks nothing does not come round it: the process asks too.
	expect(await send({ asked: '' })).toMatchObject({
		status: 409,
		data: { problems: [expect.stringContaining('first aid was given')] }
	});
	const answers = { firstAidGiven: 'true', seenBy: 'the first-aider', sdsTaken: 'true' };
	expect(await send(answers)).toEqual({ signed: true });
	const job = await getJob(db, jobId);
	const built = job && asBuilt(job.state, job.log);
	expect(built?.troubles[0]?.mended).toMatchObject({
		by: ada.id,
		answers: { firstAidGiven: true, seenBy: 'the first-aider', sdsTaken: true }
	});
});
