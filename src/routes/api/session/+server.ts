import { json } from '@sveltejs/kit';
import { api, readJson } from '$lib/server/api';
import { newSessionSchema } from '$lib/server/api-schemas';
import { wrongPin } from '$lib/server/append-answer';
import { now } from '$lib/server/clock';
import { listPeople } from '$lib/server/people.repository';
import { checkPin } from '$lib/server/pin';
import {
	clearSessionCookie,
	endSession,
	SESSION_COOKIE,
	setSessionCookie,
	startSession
} from '$lib/server/sessions';

export const GET = api(async ({ locals }) => {
	const people = await listPeople(locals.db);
	return json({
		person: locals.person,
		people: people.filter((p) => !p.retired).map(({ id, name, role }) => ({ id, name, role }))
	});
});

export const POST = api(async ({ locals, request, cookies, url, getClientAddress }) => {
	const { personId, pin } = await readJson(request, newSessionSchema);
	const at = now();
	const answer = await checkPin(locals.db, { personId, pin, address: getClientAddress(), at });
	if (!answer.ok) return wrongPin(answer.waitS);
	setSessionCookie(cookies, await startSession(locals.db, personId, at), url);
	return json({ personId }, { status: 201 });
});

export const DELETE = api(async ({ locals, cookies, url }) => {
	await endSession(locals.db, cookies.get(SESSION_COOKIE));
	clearSessionCookie(cookies, url);
	return new Response(null, { status: 204 });
});
