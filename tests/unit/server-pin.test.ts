import { sql } from 'kysely';
import { expect, test } from 'vitest';
import {
	addPerson,
	listPeople,
	retirePerson,
	setPin
} from '../../src/lib/server/people.repository';
import { checkPin } from '../../src/lib/server/pin';
import { hashPin, pinMatches } from '../../src/lib/server/pin-hash';
import { endSession, personOfSession, startSession } from '../../src/lib/server/sessions';
import { AT } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const later = (seconds: number) => new Date(Date.parse(AT) + seconds * 1000).toISOString();

async function shopWithTwo() {
	const db = await testStore();
	const ada = await addPerson(db, { name: 'Ada Quill', role: 'supervisor', pin: '2468' });
	const ben = await addPerson(db, { name: 'Ben Marsh', role: 'apprentice', pin: '1357' });
	const tryPin = (personId: string, pin: string, at: string, address = '192.0.2.1') =>
		checkPin(db, { personId, pin, address, at });
	return { db, ada, ben, tryPin };
}

test('a PIN is kept under scrypt with a salt of its own', async () => {
	const [one, two] = [await hashPin('2468'), await hashPin('2468')];
	expect(one).toMatch(/^scrypt\$32768\$8\$1\$/);
	expect(one).not.toBe(two);
	expect(await pinMatches('2468', one)).toBe(true);
	expect(await pinMatches('2469', one)).toBe(false);
});

test('from the third wrong PIN on, waits double up to 15 minutes; a right one ends them', async () => {
	const { ada, tryPin } = await shopWithTwo();
	const waits: number[] = [];
	let s = 0;
	for (let i = 0; i < 12; i++) {
		const answer = await tryPin(ada.id, '0000', later(s));
		if (answer.ok) throw new Error('a wrong PIN was taken');
		waits.push(answer.waitS);
		s += answer.waitS;
	}
	expect(waits).toEqual([0, 0, 5, 10, 20, 40, 80, 160, 320, 640, 900, 900]);
	expect(await tryPin(ada.id, '2468', later(s))).toEqual({ ok: true });
	expect(await tryPin(ada.id, '0000', later(s))).toEqual({ ok: false, waitS: 0 });
});

test('while the wait lasts, even the right PIN is not looked at', async () => {
	const { ada, tryPin } = await shopWithTwo();
	for (let i = 0; i < 3; i++) await tryPin(ada.id, '0000', AT);
	expect(await tryPin(ada.id, '2468', later(2))).toEqual({ ok: false, waitS: 3 });
	expect(await tryPin(ada.id, '2468', later(5))).toEqual({ ok: true });
});

test('the wait follows the person to another address, and the address to another person', async () => {
	const { ada, ben, tryPin } = await shopWithTwo();
	for (let i = 0; i < 3; i++) await tryPin(ada.id, '0000', AT, '192.0.2.1');
	expect(await tryPin(ada.id, '2468', AT, '192.0.2.2')).toEqual({ ok: false, waitS: 5 });
	// Three wrong tries of one person do not shut the bench for the others; ten from one address do.
	for (let i = 0; i < 7; i++) await tryPin(`stranger-${i}`, '0000', AT, '192.0.2.1');
	expect(await tryPin(ben.id, '1357', AT, '192.0.2.1')).toEqual({ ok: false, waitS: 5 });
	expect(await tryPin(ben.id, '1357', AT, '192.0.2.2')).toEqual({ ok: true });
});

test('many tries at the same moment do not get past the wait', async () => {
	const { db, ada, tryPin } = await shopWithTwo();
	// A database takes tries of one moment in any order, so the right one comes after them.
	const wrong = ['0000', '0001', '0002', '0003', '0004', '0005', '0006', '0007'];
	const answers = await Promise.all(wrong.map((pin) => tryPin(ada.id, pin, AT)));
	expect(answers.some((a) => a.ok)).toBe(false);
	expect(await tryPin(ada.id, '2468', AT)).toMatchObject({ ok: false });
	const looked = await db
		.selectFrom('pin_attempt')
		.select('n')
		.where('outcome', '!=', 'too soon')
		.execute();
	expect(looked).toHaveLength(3);
});

test('a clock set back makes no wait longer than it was', async () => {
	const { ada, tryPin } = await shopWithTwo();
	for (let i = 0; i < 3; i++) await tryPin(ada.id, '0000', AT);
	expect(await tryPin(ada.id, '2468', later(-3600))).toEqual({ ok: false, waitS: 5 });
});

test('every try is logged, and no PIN is anywhere in the store', async () => {
	const { db, ada, tryPin } = await shopWithTwo();
	await tryPin(ada.id, '86420975', AT);
	await tryPin(ada.id, '2468', AT);
	const attempts = await db.selectFrom('pin_attempt').selectAll().execute();
	expect(attempts.map((a) => a.outcome)).toEqual(['wrong', 'right']);
	const people = await db.selectFrom('person').selectAll().execute();
	const kept = JSON.stringify([attempts, people.map((p) => p.pin_hash.split('$')[0])]);
	expect(kept).not.toContain('86420975');
	expect(kept).not.toContain('"2468"');
});

test('a retired person cannot sign in, and loses the sessions there are', async () => {
	const { db, ben, tryPin } = await shopWithTwo();
	const token = await startSession(db, ben.id, AT);
	expect((await personOfSession(db, token, AT))?.name).toBe('Ben Marsh');
	expect(await retirePerson(db, ben.id)).toBe('retired');
	expect(await personOfSession(db, token, AT)).toBeNull();
	expect(await tryPin(ben.id, '1357', AT)).toMatchObject({ ok: false });
	expect((await listPeople(db)).map((p) => p.retired)).toEqual([false, true]);
});

test('the last one who may sign cannot be retired', async () => {
	const { db, ada } = await shopWithTwo();
	expect(await retirePerson(db, ada.id)).toBe('last supervisor');
	expect(await retirePerson(db, 'nobody')).toBe('unknown');
});

test('a session lasts 12 idle hours, is kept as a hash only, and ends when told', async () => {
	const { db, ada } = await shopWithTwo();
	const token = await startSession(db, ada.id, AT);
	const { rows } = await sql`select * from session`.execute(db);
	expect(JSON.stringify(rows)).not.toContain(token);
	expect(await personOfSession(db, token, later(11 * 3600))).not.toBeNull();
	expect(await personOfSession(db, token, later(22 * 3600))).not.toBeNull();
	expect(await personOfSession(db, token, later(35 * 3600))).toBeNull();
	const next = await startSession(db, ada.id, AT);
	await endSession(db, next);
	expect(await personOfSession(db, next, AT)).toBeNull();
	expect(await personOfSession(db, undefined, AT)).toBeNull();
});

test('a new PIN ends the sessions begun with the old one', async () => {
	const { db, ada, ben, tryPin } = await shopWithTwo();
	const token = await startSession(db, ben.id, AT);
	expect(await setPin(db, ben.id, '99887766', { by: ada.id })).toBe('set');
	expect(await personOfSession(db, token, AT)).toBeNull();
	expect(await tryPin(ben.id, '99887766', AT)).toEqual({ ok: true });
});

test.each(['', '123', '123456789', '12a4', ' 1234', '١٢٣٤'])(
	'the PIN "%s" is not accepted',
	async (pin) => {
		const { db } = await shopWithTwo();
		await expect(addPerson(db, { name: 'Cy', role: 'apprentice', pin })).rejects.toThrow(
			/PIN of 4 to 8 digits/
		);
	}
);
