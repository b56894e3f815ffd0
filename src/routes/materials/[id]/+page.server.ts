import { error, fail, redirect } from '@sveltejs/kit';
import { sdsReader, withSdsReader } from '$lib/core/materials/sds-reader';
import { mayEdit } from '$lib/screen/form/may-edit';
import { draftOfSheet } from '$lib/screen/material/draft-of-sheet';
import { now } from '$lib/server/clock';
import { getSheet, saveSheet } from '$lib/server/sheets.repository';
import { postedSheet } from '../sheet-action';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ params, locals, url }) => {
	const { sheet, canEdit } = await asked(params.id, locals);
	return {
		id: sheet.id,
		name: sheet.name,
		maker: sheet.maker,
		kind: sheet.kind,
		family: sheet.family,
		retired: sheet.retired,
		/** Who answers for it that the SDS names none of the usual hazards, and since when. */
		sdsReader: sdsReader(sheet),
		draft: draftOfSheet(sheet, locals.shop?.units ?? 'SI'),
		canEdit,
		isSaved: url.searchParams.has('saved')
	};
};

export const actions: Actions = {
	save: async ({ request, params, locals }) => {
		const { sheet } = await toEdit(params.id, locals);
		const kept = { id: sheet.id, retired: sheet.retired };
		const posted = postedSheet(await request.formData(), locals.shop?.units ?? 'SI', kept);
		if (!posted.sheet) return fail(400, { draft: posted.draft, errors: posted.errors });
		const reader = { name: locals.person?.name ?? '', at: now() };
		await saveSheet(locals.db, withSdsReader(posted.sheet, sheet, reader));
		redirect(303, `/materials/${sheet.id}?saved`);
	},
	retire: async ({ params, locals }) => {
		const { sheet } = await toEdit(params.id, locals);
		await saveSheet(locals.db, { ...sheet, retired: !sheet.retired });
		redirect(303, `/materials/${sheet.id}`);
	}
};

async function asked(id: string, locals: App.Locals) {
	const sheet = await getSheet(locals.db, id);
	if (!sheet) error(404, 'There is no such data sheet.');
	return { sheet, canEdit: mayEdit(locals.person) };
}

async function toEdit(id: string, locals: App.Locals) {
	const found = await asked(id, locals);
	if (!found.canEdit) error(403, 'Data sheets are changed by mold makers and supervisors.');
	return found;
}
