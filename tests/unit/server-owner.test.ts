import { expect, test } from 'vitest';
import { mayAdminister } from '../../src/lib/server/administer';
import {
	deviceOf,
	endDevice,
	listDevices,
	refusesDevice,
	registerDevice,
	saveSetting,
	setOnlyKnownDevices
} from '../../src/lib/server/devices';
import {
	forgetPassword,
	hasPassword,
	setPassword,
	weakPasswordWords
} from '../../src/lib/server/password';
import { addPerson, listPeople, maySign } from '../../src/lib/server/people.repository';
import { checkPin } from '../../src/lib/server/pin';
import { endOtherSessions, endSessionById, listSessions } from '../../src/lib/server/session-list';
import { IDLE_SETTING, personOfSession, startSession } from '../../src/lib/server/sessions';
import { createShop } from '../../src/lib/server/setup';
import { isUnlocked, unlock } from '../../src/lib/server/unlock';
import { countSigners, rolesToGive } from '../../src/lib/screen/people/people-rights';
import { testInputs } from '../fixtures/materials';
import { AT } from '../fixtures/server-store';
import { testStore } from '../fixtures/test-store';

const later = (seconds: number) => new Date(Date.parse(AT) + seconds * 1000).toISOString();
const PASSWORD = 'walnut frame at dawn';

async function shop() {
	const db = await testStore();
	const owner = await addPerson(db, { name: 'Ola Quill', role: 'owner', pin: '24682468' });
	const maker = await addPerson(db, { name: 'Ben Marsh', role: 'mold maker', pin: '13571357' });
	return { db, owner, maker };
}

/** Cookies of one browser, as the framework hands them to a route. */
function browser() {
	const jar = new Map<string, string>();
	const cookies = {
		get: (name: string) => jar.get(name),
		set: (name: string, value: string, options: object) => {
			expect(options).toMatchObject({ httpOnly: true, sameSite: 'strict', path: '/' });
			jar.set(name, value);
		}
	};
	return cookies as unknown as Parameters<typeof registerDevice>[2]['cookies'];
}

test('a password is 12 to 128 characters of any kind, and not what is tried first', () => {
	for (const good of [PASSWORD, 'ölwanne, zwölf Töpfe', 'x7#kQ!p2Lm9@']) {
		expect([good, weakPasswordWords(good, ['Ola', 'Quill'])]).toEqual([good, null]);
	}
	const bad = ['short', 'elevenchars', 'aaaaaaaaaaaaaa', 'abcabcabcabcabc', 'my password is long'];
	for (const word of [...bad, 'quill at the bench', 'x'.repeat(129), '1234567890 and more']) {
		expect([word, weakPasswordWords(word, ['Ola', 'Quill'])]).not.toEqual([word, null]);
	}
});

test('the password has a wait of its own, which no right PIN ends', async () => {
	const { db, owner } = await shop();
	const tried = { personId: owner.id, address: '192.0.2.1', at: AT };
	const password = (pin: string, at = AT) =>
		checkPin(db, { ...tried, at, pin, secret: 'password' });
	expect(await password(PASSWORD)).toMatchObject({ ok: false });
	await setPassword(db, owner.id, PASSWORD, AT);
	expect(await hasPassword(db, owner.id)).toBe(true);
	expect(await password(PASSWORD)).toEqual({ ok: true });
	// The PIN is not the password, nor the other way round.
	expect(await password('24682468')).toMatchObject({ ok: false });
	expect(await checkPin(db, { ...tried, pin: PASSWORD })).toMatchObject({ ok: false });
	await password('wrong');
	expect(await checkPin(db, { ...tried, pin: '24682468' })).toEqual({ ok: true });
	expect(await password('wrong')).toEqual({ ok: false, waitS: 5 });
	expect(await checkPin(db, { ...tried, pin: '24682468' })).toEqual({ ok: true });
	expect(await password(PASSWORD, later(4))).toEqual({ ok: false, waitS: 1 });
	expect(await password(PASSWORD, later(5))).toEqual({ ok: true });
	expect(await forgetPassword(db, 'Ola Quill')).toBe(1);
	expect(await hasPassword(db, owner.id)).toBe(false);
});

test('the owner’s pages open for one session, and shut after 15 minutes without use', async () => {
	const { db, owner } = await shop();
	const [here, there] = [
		await startSession(db, owner.id, AT),
		await startSession(db, owner.id, AT)
	];
	expect(await isUnlocked(db, here, AT)).toBe(false);
	await unlock(db, here, AT);
	expect(await isUnlocked(db, here, later(899))).toBe(true);
	expect(await isUnlocked(db, here, later(900))).toBe(false);
	expect(await isUnlocked(db, there, AT)).toBe(false);
	expect(await isUnlocked(db, undefined, AT)).toBe(false);
	// A clock that was set back does not open them for longer.
	expect(await isUnlocked(db, here, later(-60))).toBe(false);
});

test('only owners administer; in a shop without one, supervisors do', () => {
	const person = (role: 'apprentice' | 'mold maker' | 'supervisor' | 'owner', retired = false) => ({
		id: role,
		role,
		retired
	});
	const [owner, head] = [person('owner'), person('supervisor')];
	expect(mayAdminister(owner, [owner, head])).toBe(true);
	expect(mayAdminister(head, [owner, head])).toBe(false);
	expect(mayAdminister(head, [person('owner', true), head])).toBe(true);
	expect(mayAdminister(person('mold maker'), [head])).toBe(false);
	expect(mayAdminister(null, [])).toBe(false);
});

test('sessions are seen and ended from elsewhere; what is seen cannot be used to sign in', async () => {
	const { db, owner, maker } = await shop();
	const own = await startSession(db, owner.id, AT);
	const tokens = [await startSession(db, maker.id, AT), await startSession(db, maker.id, later(1))];
	const listed = await listSessions(db, own);
	expect(listed[0]).toMatchObject({ personName: 'Ben Marsh', role: 'mold maker', isThis: false });
	expect(listed.filter(({ isThis }) => isThis).map(({ personName }) => personName)).toEqual([
		'Ola Quill'
	]);
	expect(listed).toHaveLength(3);
	for (const { id } of listed) expect(await personOfSession(db, id, AT)).toBeNull();
	const [latest] = listed;
	await endSessionById(db, latest?.id ?? '');
	expect(await personOfSession(db, tokens[1], later(2))).toBeNull();
	expect((await personOfSession(db, tokens[0], later(2)))?.name).toBe('Ben Marsh');
	expect(await endOtherSessions(db, own)).toBe(1);
	expect(await personOfSession(db, tokens[0], later(2))).toBeNull();
	expect((await personOfSession(db, own, later(2)))?.name).toBe('Ola Quill');
});

test('a session ends when it was idle for as long as the owner chose', async () => {
	const { db, maker } = await shop();
	const token = await startSession(db, maker.id, AT);
	expect(await personOfSession(db, token, later(30 * 60))).not.toBeNull();
	await saveSetting(db, IDLE_SETTING, '15');
	const again = await startSession(db, maker.id, AT);
	expect(await personOfSession(db, again, later(15 * 60))).not.toBeNull();
	expect(await personOfSession(db, again, later(31 * 60))).toBeNull();
});

test('signing in is kept to devices that were registered, and ends with them', async () => {
	const { db, owner, maker } = await shop();
	const [tablet, stranger] = [browser(), browser()];
	const url = new URL('http://shop.example');
	const named = { name: 'Tablet at bench 2', by: owner.id, at: AT };
	await registerDevice(db, named, { cookies: tablet, url });
	const device = await deviceOf(db, tablet);
	expect(device?.name).toBe('Tablet at bench 2');
	expect(await deviceOf(db, stranger)).toBeNull();

	expect(await refusesDevice(db, null, maker.id)).toBeNull();
	await setOnlyKnownDevices(db, true);
	expect(await refusesDevice(db, null, maker.id)).toMatch(/not registered/);
	expect(await refusesDevice(db, device, maker.id)).toBeNull();
	// Whoever looks after the shop can still register one.
	expect(await refusesDevice(db, null, owner.id)).toBeNull();

	const token = await startSession(db, maker.id, AT, device?.id);
	expect((await listSessions(db, undefined))[0]?.device).toBe('Tablet at bench 2');
	await endDevice(db, device?.id ?? '', AT);
	expect(await personOfSession(db, token, AT)).toBeNull();
	expect(await deviceOf(db, tablet)).toBeNull();
	expect(await listDevices(db)).toEqual([]);
});

test('whoever sets up a shop is its owner: signs, looks after it and adds others who sign, also beside a second owner', async () => {
	const db = await testStore();
	const { shop: settings } = testInputs();
	const founder = await createShop(db, {
		shop: settings,
		owner: { name: 'Ada Quill', pin: '24682468' },
		at: AT
	});
	if (!founder) throw new Error('there is a shop already');
	await addPerson(db, { name: 'Ola Quill', role: 'owner', pin: '13571357' }, AT, founder.id);
	const people = await listPeople(db);
	expect(maySign(founder)).toBe(true);
	expect(mayAdminister(founder, people)).toBe(true);
	expect(rolesToGive(founder, people)).toContain('supervisor');
	// The second one's PIN was given, and signs nothing yet.
	expect(countSigners(people)).toEqual({ signing: 1, pending: 1 });
});
