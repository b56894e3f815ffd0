import type { Db } from './database';
import { hashOf, IDLE_SETTING } from './sessions';

export interface OpenSession {
	/** What the store keeps of its token: enough to end it, not to use it. */
	id: string;
	personName: string;
	role: string;
	/** Name of the registered device it was begun on. */
	device: string | null;
	startedAt: string;
	seenAt: string;
	isThis: boolean;
}

/** Minutes without use after which a session ends; the first is what holds where nothing was chosen. */
export const IDLE_CHOICES_MIN = [720, 240, 60, 30, 15] as const;

/** Every session, last used first. Some may be idle for too long and end when they are used next. */
export async function listSessions(db: Db, ownToken: string | undefined): Promise<OpenSession[]> {
	const rows = await db
		.selectFrom('session')
		.innerJoin('person', 'person.id', 'session.person_id')
		.leftJoin('device', 'device.id', 'session.device_id')
		.select([
			'session.token_hash',
			'session.started_at',
			'session.seen_at',
			'person.name',
			'person.role',
			'device.name as device'
		])
		.orderBy('session.seen_at', 'desc')
		.execute();
	const own = ownToken ? hashOf(ownToken) : '';
	return rows.map((row) => ({
		id: row.token_hash,
		personName: row.name,
		role: row.role,
		device: row.device,
		startedAt: row.started_at,
		seenAt: row.seen_at,
		isThis: row.token_hash === own
	}));
}

/** Ends one session by what the list calls it. */
export async function endSessionById(db: Db, id: string): Promise<void> {
	await db.deleteFrom('session').where('token_hash', '=', id).execute();
}

/** Ends every session but one's own. @returns how many */
export async function endOtherSessions(db: Db, ownToken: string | undefined): Promise<number> {
	const { numDeletedRows } = await db
		.deleteFrom('session')
		.where('token_hash', '!=', hashOf(ownToken ?? ''))
		.executeTakeFirst();
	return Number(numDeletedRows);
}

/** Minutes without use after which a session ends. */
export async function idleMinutes(db: Db): Promise<number> {
	const row = await db
		.selectFrom('setting')
		.select('value')
		.where('name', '=', IDLE_SETTING)
		.executeTakeFirst();
	return Number(row?.value) || IDLE_CHOICES_MIN[0];
}
