import { error, fail, redirect } from '@sveltejs/kit';
import { mayEdit } from '$lib/screen/form/may-edit';
import { emptyPattern } from '$lib/screen/pattern/pattern-draft';
import { now } from '$lib/server/clock';
import { hasMesh } from '$lib/server/mesh-files';
import { savePattern } from '$lib/server/patterns.repository';
import { postedPattern } from '../../pattern-action';
import { gloveSheets } from '../../glove-sheets';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals }) => {
	if (!mayEdit(locals.person)) error(403, 'Patterns are added by mold makers and supervisors.');
	return { draft: emptyPattern(), sheets: await gloveSheets(locals.db) };
};

export const actions: Actions = {
	default: async ({ request, locals }) => {
		if (!mayEdit(locals.person)) error(403, 'Patterns are added by mold makers and supervisors.');
		const posted = postedPattern(await request.formData(), locals.shop?.units ?? 'SI');
		if (!posted.pattern) return fail(400, { draft: posted.draft, errors: posted.errors });
		const { body } = posted.pattern;
		if (body.kind !== 'mesh' || !(await hasMesh(locals.db, body.file.sha256))) {
			const errors = {
				'body.mesh': 'The file is not in the shop’s store. Open it again and save.'
			};
			return fail(400, { draft: emptyPattern(), errors });
		}
		const id = await savePattern(locals.db, { pattern: posted.pattern, at: now() });
		redirect(303, `/patterns/${id}?saved`);
	}
};
