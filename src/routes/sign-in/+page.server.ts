import { fail, redirect } from '@sveltejs/kit';
import { now } from '$lib/server/clock';
import { deviceOf, refusesDevice } from '$lib/server/devices';
import { demoPins } from '$lib/server/demo';
import { listPeople } from '$lib/server/people.repository';
import { checkPin } from '$lib/server/pin';
import { wrongPinWords } from '$lib/server/pin-words';
import { setSessionCookie, startSession } from '$lib/server/sessions';
import { nextPage } from './next-page';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url }) => {
	if (!locals.shop) redirect(303, '/start');
	const people = (await listPeople(locals.db)).filter(({ retired }) => !retired);
	const pins = new Map(
		locals.shop.isDemo ? demoPins().map(({ name, pin }) => [name, pin] as const) : []
	);
	return {
		shopName: locals.shop.name,
		people: people.map(({ id, name, role }) => ({ id, name, role, pin: pins.get(name) ?? null })),
		next: nextPage(url.searchParams.get('next'))
	};
};

export const actions: Actions = {
	default: async ({ request, locals, cookies, url, getClientAddress }) => {
		const form = await request.formData();
		const personId = String(form.get('person') ?? '');
		const pin = String(form.get('pin') ?? '');
		if (personId === '') return fail(400, { personId, error: 'Tap your name first.' });

		const { db } = locals;
		const device = await deviceOf(db, cookies);
		const refusal = await refusesDevice(db, device, personId);
		if (refusal) return fail(403, { personId, error: refusal });
		const at = now();
		const answer = await checkPin(locals.db, { personId, pin, address: getClientAddress(), at });
		if (!answer.ok) {
			return fail(answer.waitS > 0 ? 429 : 403, {
				personId,
				error: wrongPinWords(answer.waitS)
			});
		}
		setSessionCookie(cookies, await startSession(db, personId, at, device?.id), url);
		redirect(303, nextPage(String(form.get('next') ?? '')));
	}
};
