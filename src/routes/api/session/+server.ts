import { json } from '@sveltejs/kit';
import { api, readJson, unfit } from '$lib/server/api';
import { newSessionSchema } from '$lib/server/api-schemas';
import { wrongPin } from '$lib/server/append-answer';
import { now } from '$lib/server/clock';
import { deviceOf, refusesDevice } from '$lib/server/devices';
import { problemResponse } from '$lib/server/problem';
import { chooseOwnPin, hasGivenPin } from '$lib/server/own-pin';
import { listPeople } from '$lib/server/people.repository';
import { weakPinWords } from '$lib/server/weak-pin';
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
	const { personId, pin, newPin } = await readJson(request, newSessionSchema);
	const { db } = locals;
	const device = await deviceOf(db, cookies);
	const refusal = await refusesDevice(db, device, personId);
	if (refusal)
		return problemResponse({ status: 403, code: 'device-not-registered', detail: refusal });
	const at = now();
	const asked = { personId, pin, address: getClientAddress(), at };
	if (newPin === undefined) {
		const answer = await checkPin(db, asked);
		if (!answer.ok) return wrongPin(answer.waitS);
	} else {
		const weak = weakPinWords(newPin);
		if (weak) throw unfit([{ path: 'newPin', message: weak }]);
		const chosen = await chooseOwnPin(db, { ...asked, newPin });
		if (chosen.status === 'wrong PIN') return wrongPin(chosen.waitS);
		if (chosen.status === 'same PIN') {
			throw unfit([{ path: 'newPin', message: 'the PIN in force; accepted: another one' }]);
		}
	}
	setSessionCookie(cookies, await startSession(db, personId, at, device?.id), url);
	return json({ personId, hasOwnPin: !(await hasGivenPin(db, personId)) }, { status: 201 });
});

export const DELETE = api(async ({ locals, cookies, url }) => {
	await endSession(locals.db, cookies.get(SESSION_COOKIE));
	clearSessionCookie(cookies, url);
	return new Response(null, { status: 204 });
});
