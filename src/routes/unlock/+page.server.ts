import { error, fail, redirect } from '@sveltejs/kit';
import { mayAdminister } from '$lib/server/administer';
import { now } from '$lib/server/clock';
import { hasPassword, setPassword, weakPasswordWords } from '$lib/server/password';
import { listPeople } from '$lib/server/people.repository';
import { checkPin } from '$lib/server/pin';
import { wrongPinWords } from '$lib/server/pin-words';
import { SESSION_COOKIE } from '$lib/server/sessions';
import { unlock } from '$lib/server/unlock';
import { nextPage } from '../sign-in/next-page';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

async function administrator({ locals }: Pick<RequestEvent, 'locals'>) {
	const { db, person } = locals;
	if (person && mayAdminister(person, await listPeople(db))) return person;
	error(403, 'These pages are the owner’s; in a shop without one, a supervisor’s.');
}

export const load: PageServerLoad = async ({ locals, url }) => {
	const person = await administrator({ locals });
	return {
		hasPassword: await hasPassword(locals.db, person.id),
		next: nextPage(url.searchParams.get('next') ?? '/shop/care')
	};
};

export const actions: Actions = {
	/** With the password there is. */
	open: async (event) => {
		const { locals, request, cookies, getClientAddress } = event;
		const { id } = await administrator(event);
		const form = await request.formData();
		const pin = String(form.get('password') ?? '').normalize('NFKC');
		const at = now();
		const tried = { personId: id, pin, address: getClientAddress(), at };
		const answer = await checkPin(locals.db, { ...tried, secret: 'password' });
		if (!answer.ok) {
			const words =
				answer.waitS > 0
					? `Too many wrong passwords. Wait ${answer.waitS} s, then try again.`
					: 'That is not the password. Try again.';
			return fail(answer.waitS > 0 ? 429 : 403, { errors: { password: words } });
		}
		await unlock(locals.db, cookies.get(SESSION_COOKIE), at);
		redirect(303, nextPage(String(form.get('next') ?? '')));
	},
	/** The first one, or another in place of it: with the PIN, and the old one when there is one. */
	choose: async (event) => {
		const { locals, request, cookies, getClientAddress } = event;
		const { id, name } = await administrator(event);
		const form = await request.formData();
		const text = (field: string) => String(form.get(field) ?? '');
		const weak = weakPasswordWords(text('newPassword'), [
			...name.split(/\s+/),
			locals.shop?.name ?? ''
		]);
		if (weak) return fail(400, { errors: { newPassword: weak } });
		if (text('newPassword') !== text('newPasswordAgain')) {
			return fail(400, { errors: { newPasswordAgain: 'The two differ.' } });
		}
		const at = now();
		const address = getClientAddress();
		if (await hasPassword(locals.db, id)) {
			const old = text('password').normalize('NFKC');
			const tried = { personId: id, pin: old, address, at, secret: 'password' as const };
			const answer = await checkPin(locals.db, tried);
			if (!answer.ok) {
				return fail(403, { errors: { oldPassword: 'That is not the password in force.' } });
			}
		}
		const answer = await checkPin(locals.db, { personId: id, pin: text('pin'), address, at });
		if (!answer.ok) {
			return fail(answer.waitS > 0 ? 429 : 403, { errors: { pin: wrongPinWords(answer.waitS) } });
		}
		await setPassword(locals.db, id, text('newPassword'), at);
		await unlock(locals.db, cookies.get(SESSION_COOKIE), at);
		redirect(303, nextPage(text('next')));
	}
};
