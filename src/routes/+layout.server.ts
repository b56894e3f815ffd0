import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = ({ locals }) => ({
	person: locals.person,
	shop: locals.shop,
	locale: locals.locale
});
