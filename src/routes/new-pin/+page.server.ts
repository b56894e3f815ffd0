import { error, fail, redirect } from '@sveltejs/kit';
import { now } from '$lib/server/clock';
import { deviceOf } from '$lib/server/devices';
import { chooseOwnPin, hasGivenPin } from '$lib/server/own-pin';
import { pinSchema } from '$lib/server/pin-hash';
import { wrongPinWords } from '$lib/server/pin-words';
import { weakPinWords } from '$lib/server/weak-pin';
import { setSessionCookie, startSession } from '$lib/server/sessions';
import { nextPage } from '../sign-in/next-page';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url }) => ({
	isGiven: locals.person !== null && (await hasGivenPin(locals.db, locals.person.id)),
	next: nextPage(url.searchParams.get('next'))
});

export const actions: Actions = {
	default: async ({ request, locals, cookies, url, getClientAddress }) => {
		const { db, person } = locals;
		if (!person) error(401, 'Sign in first.');
		const form = await request.formData();
		const text = (name: string) => String(form.get(name) ?? '');
		const newPin = pinSchema.safeParse(text('newPin'));
		if (!newPin.success) {
			return fail(400, { errors: { newPin: 'Accepted: a PIN of 4 to 8 digits.' } });
		}
		const weak = weakPinWords(newPin.data);
		if (weak) return fail(400, { errors: { newPin: weak } });
		if (newPin.data !== text('newPinAgain')) {
			return fail(400, { errors: { newPinAgain: 'The two new PINs differ.' } });
		}
		const at = now();
		const chosen = await chooseOwnPin(db, {
			personId: person.id,
			pin: text('pin'),
			newPin: newPin.data,
			address: getClientAddress(),
			at
		});
		if (chosen.status === 'wrong PIN') {
			const { waitS } = chosen;
			return fail(waitS > 0 ? 429 : 403, { errors: { pin: wrongPinWords(waitS) } });
		}
		if (chosen.status === 'same PIN') {
			return fail(400, { errors: { newPin: 'That is the PIN you have. Accepted: another one.' } });
		}
		setSessionCookie(
			cookies,
			await startSession(db, person.id, at, (await deviceOf(db, cookies))?.id),
			url
		);
		redirect(303, nextPage(text('next')));
	}
};
