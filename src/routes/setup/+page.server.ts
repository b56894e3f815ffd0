import { fail, redirect } from '@sveltejs/kit';
import { formTree } from '$lib/screen/form/form-tree';
import { readSetup } from '$lib/screen/form/read-setup';
import { EMPTY_SETUP, setupDraftSchema } from '$lib/screen/form/setup-draft';
import { now } from '$lib/server/clock';
import { weakPinWords } from '$lib/server/weak-pin';
import { newPersonSchema } from '$lib/server/people.repository';
import { setSessionCookie, startSession } from '$lib/server/sessions';
import { createShop } from '$lib/server/setup';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	if (locals.shop) redirect(303, '/');
	return { draft: EMPTY_SETUP, zones: ['UTC', ...Intl.supportedValuesOf('timeZone')] };
};

export const actions: Actions = {
	default: async ({ request, locals, cookies, url }) => {
		const form = await request.formData();
		const draft = setupDraftSchema.catch(EMPTY_SETUP).parse(formTree(form));
		const { shop, errors } = readSetup(draft);
		const pin = String(form.get('pin') ?? '');
		const person = newPersonSchema.omit({ role: true }).safeParse({ name: draft.owner, pin });
		for (const { path } of person.error?.issues ?? []) {
			if (path[0] === 'pin') errors.pin = 'Accepted: a PIN of 4 to 8 digits.';
			else errors.owner = 'Accepted: a name of 1 to 120 characters.';
		}
		const weak = weakPinWords(pin);
		if (weak) errors.pin ??= weak;
		if (pin !== String(form.get('pinAgain') ?? '')) errors.pinAgain = 'The two PINs differ.';
		if (!shop || !person.success || Object.keys(errors).length > 0)
			return fail(400, { draft, errors });

		const at = now();
		const owner = await createShop(locals.db, { shop, owner: person.data, at });
		if (!owner) redirect(303, '/sign-in');
		setSessionCookie(cookies, await startSession(locals.db, owner.id, at), url);
		redirect(303, '/board');
	}
};
