import { error, fail, redirect } from '@sveltejs/kit';
import { mayEdit } from '$lib/screen/form/may-edit';
import { draftOfPattern } from '$lib/screen/pattern/draft-of-pattern';
import { now } from '$lib/server/clock';
import { hasMesh } from '$lib/server/mesh-files';
import { getPattern, savePattern } from '$lib/server/patterns.repository';
import { gloveSheets } from '../glove-sheets';
import { postedPattern } from '../pattern-action';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ params, locals, url }) => {
	const row = await getPattern(locals.db, params.id);
	if (!row) error(404, 'There is no such pattern.');
	const isMesh = row.pattern.body.kind === 'mesh';
	return {
		id: row.id,
		sheets: isMesh ? await gloveSheets(locals.db) : [],
		name: row.pattern.name,
		purpose: row.pattern.purpose,
		mesh: row.pattern.body.kind === 'mesh' ? row.pattern.body : null,
		draft: draftOfPattern(row.pattern, locals.shop?.units ?? 'SI'),
		canEdit: mayEdit(locals.person),
		isSaved: url.searchParams.has('saved')
	};
};

export const actions: Actions = {
	default: async ({ request, params, locals }) => {
		if (!mayEdit(locals.person)) error(403, 'Patterns are changed by mold makers and supervisors.');
		if (!(await getPattern(locals.db, params.id))) error(404, 'There is no such pattern.');
		const posted = postedPattern(await request.formData(), locals.shop?.units ?? 'SI');
		if (!posted.pattern) return fail(400, { draft: posted.draft, errors: posted.errors });
		const { body } = posted.pattern;
		if (body.kind === 'mesh' && !(await hasMesh(locals.db, body.file.sha256))) {
			const errors = {
				'body.mesh': 'The file is not in the shop’s store. Open it again and save.'
			};
			return fail(400, {
				draft: draftOfPattern(posted.pattern, locals.shop?.units ?? 'SI'),
				errors
			});
		}
		await savePattern(locals.db, { id: params.id, pattern: posted.pattern, at: now() });
		redirect(303, `/patterns/${params.id}?saved`);
	}
};
