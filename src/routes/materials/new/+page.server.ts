import { randomBytes } from 'node:crypto';
import { error, fail, redirect } from '@sveltejs/kit';
import { withSdsReader } from '$lib/core/materials/sds-reader';
import { mayEdit } from '$lib/screen/form/may-edit';
import { emptySheet } from '$lib/screen/material/sheet-draft';
import { now } from '$lib/server/clock';
import { saveSheet } from '$lib/server/sheets.repository';
import { postedSheet, sheetId } from '../sheet-action';
import type { Actions, PageServerLoad } from './$types';

const REFUSAL = 'Data sheets are added by mold makers and supervisors.';

export const load: PageServerLoad = ({ locals }) => {
	if (!mayEdit(locals.person)) error(403, REFUSAL);
	return { draft: emptySheet() };
};

export const actions: Actions = {
	save: async ({ request, locals }) => {
		if (!mayEdit(locals.person)) error(403, REFUSAL);
		const form = await request.formData();
		const id = sheetId(String(form.get('name') ?? ''), randomBytes(3).toString('hex'));
		const posted = postedSheet(form, locals.shop?.units ?? 'SI', { id, retired: false });
		if (!posted.sheet) return fail(400, { draft: posted.draft, errors: posted.errors });
		const reader = { name: locals.person?.name ?? '', at: now() };
		await saveSheet(locals.db, withSdsReader(posted.sheet, null, reader));
		redirect(303, `/materials/${id}?saved`);
	}
};
