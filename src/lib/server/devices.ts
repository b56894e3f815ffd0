import { randomBytes, randomUUID } from 'node:crypto';
import type { Cookies } from '@sveltejs/kit';
import { mayAdminister } from './administer';
import type { Db } from './database';
import { listPeople } from './people.repository';
import { hashOf } from './sessions';

const DEVICE_COOKIE = 'gw_device';
/** As long as browsers keep a cookie. */
const KEPT_S = 400 * 24 * 3600;
/** Setting: "yes" when only registered devices may sign in. */
const ONLY_KNOWN = 'onlyKnownDevices';

export interface Device {
	id: string;
	name: string;
	registeredAt: string;
}

/** Devices that were registered and not ended, in order of name. */
export async function listDevices(db: Db): Promise<Device[]> {
	const rows = await db.selectFrom('device').selectAll().where('ended_at', 'is', null).execute();
	return rows
		.map(({ id, name, registered_at }) => ({ id, name, registeredAt: registered_at }))
		.sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** Which registered device asks; null for any other. */
export async function deviceOf(db: Db, cookies: Pick<Cookies, 'get'>): Promise<Device | null> {
	const token = cookies.get(DEVICE_COOKIE);
	if (!token) return null;
	const row = await db
		.selectFrom('device')
		.selectAll()
		.where('token_hash', '=', hashOf(token))
		.where('ended_at', 'is', null)
		.executeTakeFirst();
	return row ? { id: row.id, name: row.name, registeredAt: row.registered_at } : null;
}

/** Registers the device that asks; its browser is given a mark that the store keeps only the hash of. */
export async function registerDevice(
	db: Db,
	{ name, by, at }: { name: string; by: string; at: string },
	{ cookies, url }: { cookies: Cookies; url: URL }
): Promise<void> {
	const token = randomBytes(32).toString('base64url');
	await db
		.insertInto('device')
		.values({
			id: randomUUID(),
			token_hash: hashOf(token),
			name,
			registered_at: at,
			registered_by: by,
			ended_at: null
		})
		.execute();
	cookies.set(DEVICE_COOKIE, token, {
		path: '/',
		httpOnly: true,
		sameSite: 'strict',
		secure: url.protocol === 'https:',
		maxAge: KEPT_S
	});
}

/** Ends a device and the sessions begun on it. */
export async function endDevice(db: Db, id: string, at: string): Promise<void> {
	await db.updateTable('device').set({ ended_at: at }).where('id', '=', id).execute();
	await db.deleteFrom('session').where('device_id', '=', id).execute();
}

/** Whether signing in is kept to registered devices. */
export async function onlyKnownDevices(db: Db): Promise<boolean> {
	const row = await db
		.selectFrom('setting')
		.select('value')
		.where('name', '=', ONLY_KNOWN)
		.executeTakeFirst();
	return row?.value === 'yes';
}

/**
 * Why this person may not sign in on this device, in words; null when they may. Who looks after the shop
 * may sign in anywhere, or no first device could be registered again; their pages want the password.
 */
export async function refusesDevice(
	db: Db,
	device: Device | null,
	personId: string
): Promise<string | null> {
	if (device || !(await onlyKnownDevices(db))) return null;
	const people = await listPeople(db);
	if (
		mayAdminister(
			people.find(({ id }) => id === personId),
			people
		)
	)
		return null;
	return 'This device is not registered. Ask the owner to register it, or sign in on one that is.';
}

/** Keeps signing in to registered devices, or opens it to all. */
export async function setOnlyKnownDevices(db: Db, isOn: boolean): Promise<void> {
	await saveSetting(db, ONLY_KNOWN, isOn ? 'yes' : 'no');
}

export async function saveSetting(db: Db, name: string, value: string): Promise<void> {
	await db
		.insertInto('setting')
		.values({ name, value })
		.onConflict((conflict) => conflict.column('name').doUpdateSet({ value }))
		.execute();
}
