import { redirect } from '@sveltejs/kit';
import { now } from '$lib/server/clock';
import { caution } from '$lib/server/content';
import { seedDemo } from '$lib/server/demo';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	if (locals.shop) redirect(303, '/');
	return { caution: { title: caution.title, summary: caution.summary, html: caution.html } };
};

export const actions: Actions = {
	default: async ({ locals }) => {
		// A shop that somebody else has just set up is left as it is.
		await seedDemo(locals.db, now());
		redirect(303, '/sign-in');
	}
};
