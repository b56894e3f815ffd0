import { error, redirect, type RequestEvent } from '@sveltejs/kit';
import { mayAdminister } from './administer';
import { isApi } from './api-gate';
import { now } from './clock';
import type { Db } from './database';
import { listPeople } from './people.repository';
import { ApiProblem } from './problem';
import { hashOf, SESSION_COOKIE } from './sessions';

/** The owner's pages shut when nobody used them for so long. */
const OPEN_S = 15 * 60;

/** Opens the owner's pages for this session; the caller has checked the password. */
export async function unlock(db: Db, token: string | undefined, at: string): Promise<void> {
	await db
		.updateTable('session')
		.set({ unlocked_at: at })
		.where('token_hash', '=', hashOf(token ?? ''))
		.execute();
}

/** Whether the password was given in this session, and its pages were used in the last 15 minutes. */
export async function isUnlocked(db: Db, token: string | undefined, at: string): Promise<boolean> {
	const row = await db
		.selectFrom('session')
		.select('unlocked_at')
		.where('token_hash', '=', hashOf(token ?? ''))
		.executeTakeFirst();
	if (!row?.unlocked_at) return false;
	const openS = (Date.parse(at) - Date.parse(row.unlocked_at)) / 1000;
	return openS >= 0 && openS < OPEN_S;
}

/**
 * Lets on whoever administers the shop and has given the password, and keeps the pages open for them;
 * sends others to give it, or away.
 */
export async function requireUnlocked(event: RequestEvent): Promise<{ id: string; name: string }> {
	const { locals, cookies, url } = event;
	const { db, person } = locals;
	if (!person || !mayAdminister(person, await listPeople(db))) {
		const detail = 'These pages are the owner’s; in a shop without one, a supervisor’s.';
		if (isApi(url)) throw new ApiProblem({ status: 403, code: 'not-owner', detail });
		error(403, detail);
	}
	const token = cookies.get(SESSION_COOKIE);
	const at = now();
	if (await isUnlocked(db, token, at)) {
		await unlock(db, token, at);
		return person;
	}
	if (isApi(url)) {
		const detail = 'Give the password at /unlock first.';
		throw new ApiProblem({ status: 403, code: 'locked', detail });
	}
	redirect(303, `/unlock?next=${encodeURIComponent(url.pathname)}`);
}
