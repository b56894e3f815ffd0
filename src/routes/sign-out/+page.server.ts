import { redirect } from '@sveltejs/kit';
import { clearSessionCookie, endSession, SESSION_COOKIE } from '$lib/server/sessions';
import type { Actions } from './$types';

export const actions: Actions = {
	default: async ({ locals, cookies, url }) => {
		await endSession(locals.db, cookies.get(SESSION_COOKIE));
		clearSessionCookie(cookies, url);
		redirect(303, '/sign-in');
	}
};
