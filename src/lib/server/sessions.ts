import { createHash, randomBytes } from 'node:crypto';
import type { Cookies } from '@sveltejs/kit';
import type { Db } from './database';
import { keptQuery } from './kept-query';
import { PERSON_COLUMNS, personOf, type Person } from './people.repository';
import { storageProblem } from './storage-problem';

export const SESSION_COOKIE = 'gw_session';
/** As long as a cookie lives, and a session that nobody uses where the owner chose nothing shorter. */
const IDLE_S = 12 * 3600;
export const IDLE_SETTING = 'idleMin';
/** A session's last use is written at most this often. */
const TOUCH_S = 60;

/** Starts a session. @returns the token for the cookie; the store keeps only its hash */
export async function startSession(
	db: Db,
	personId: string,
	at: string,
	deviceId: string | null = null
): Promise<string> {
	const token = randomBytes(32).toString('base64url');
	await db.deleteFrom('session').where('seen_at', '<', before(at, IDLE_S)).execute();
	await db
		.insertInto('session')
		.values({
			token_hash: hashOf(token),
			person_id: personId,
			started_at: at,
			seen_at: at,
			device_id: deviceId
		})
		.execute();
	return token;
}

/** One question for all of it: it is asked at every request. */
const sessionRow = keptQuery((db, { token_hash }: { token_hash: string }) =>
	db
		.selectFrom('session')
		.innerJoin('person', 'person.id', 'session.person_id')
		.select(PERSON_COLUMNS.map((column) => `person.${column}` as const))
		.select('seen_at')
		.select((e) =>
			e.selectFrom('setting').select('value').where('name', '=', IDLE_SETTING).as('idle_min')
		)
		.where('session.token_hash', '=', token_hash)
);

/** Who this token belongs to, or null when it is unknown, ended, or idle for longer than the shop allows. */
export async function personOfSession(
	db: Db,
	token: string | undefined,
	at: string
): Promise<Person | null> {
	if (!token) return null;
	const token_hash = hashOf(token);
	const [session] = await sessionRow(db, { token_hash });
	const idleS = Number(session?.idle_min ?? 0) * 60 || IDLE_S;
	if (!session || session.retired !== 0 || session.seen_at < before(at, idleS)) return null;
	if (session.seen_at < before(at, TOUCH_S)) await touch(db, token_hash, at);
	return personOf(session);
}

/** Notes the use of a session. On a full or read-only disk people go on reading; the session ends sooner. */
async function touch(db: Db, token_hash: string, at: string): Promise<void> {
	try {
		await db
			.updateTable('session')
			.set({ seen_at: at })
			.where('token_hash', '=', token_hash)
			.execute();
	} catch (error) {
		if (!storageProblem(error)) throw error;
	}
}

export async function endSession(db: Db, token: string | undefined): Promise<void> {
	if (token) await db.deleteFrom('session').where('token_hash', '=', hashOf(token)).execute();
}

/** Gives the browser the token. Over plain http on a shop's own network the cookie cannot be "secure". */
export function setSessionCookie(cookies: Cookies, token: string, url: URL): void {
	cookies.set(SESSION_COOKIE, token, {
		path: '/',
		httpOnly: true,
		sameSite: 'strict',
		secure: url.protocol === 'https:',
		maxAge: IDLE_S
	});
}

export function clearSessionCookie(cookies: Cookies, url: URL): void {
	cookies.delete(SESSION_COOKIE, {
		path: '/',
		httpOnly: true,
		sameSite: 'strict',
		secure: url.protocol === 'https:'
	});
}

/** What the store keeps of a token. */
export function hashOf(token: string): string {
	return createHash('sha256').update(token).digest('hex');
}

function before(at: string, seconds: number): string {
	return new Date(Date.parse(at) - seconds * 1000).toISOString();
}
