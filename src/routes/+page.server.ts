import { redirect } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	if (!locals.shop) redirect(303, '/start');
	redirect(303, locals.person ? '/board' : '/sign-in');
};
