import { fail } from '@sveltejs/kit';
import { formTree } from '$lib/screen/form/form-tree';
import { mayManage } from '$lib/screen/people/people-rights';
import { readShop, tidyDraft } from '$lib/screen/shop/read-shop';
import { draftOfShop, shopDraftSchema } from '$lib/screen/shop/shop-draft';
import { mayAdminister } from '$lib/server/administer';
import { ageOfBackupS, isOverdue } from '$lib/server/keep/schedule';
import { listPeople } from '$lib/server/people.repository';
import { saveShop } from '$lib/server/shop.repository';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals }) => ({
	isManager: mayManage(locals.person),
	mayAdminister: mayAdminister(locals.person, await listPeople(locals.db)),
	isBackupOverdue: mayManage(locals.person) && isOverdue(ageOfBackupS()),
	draft: locals.shop && draftOfShop(locals.shop),
	zones: ['UTC', ...Intl.supportedValuesOf('timeZone')]
});

export const actions: Actions = {
	default: async ({ locals, request }) => {
		if (!locals.shop || !mayManage(locals.person)) {
			return fail(403, { refused: 'The settings are kept by supervisors and owners.' });
		}
		const form = await request.formData();
		const typed = shopDraftSchema.safeParse(formTree(form));
		if (!typed.success) return fail(400, { refused: 'The form came in incomplete. Load it anew.' });
		const draft = tidyDraft(typed.data);
		const { shop, errors } = readShop(draft, locals.shop.isDemo);
		if (!shop) return fail(400, { draft, errors });
		await saveShop(locals.db, shop);
		return { saved: true };
	}
};
