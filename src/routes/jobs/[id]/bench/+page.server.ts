import { error } from '@sveltejs/kit';
import { benchView } from '$lib/core/bench/bench-view';
import { newActId } from '$lib/server/act-id';
import { actFromForm } from '$lib/server/bench-act';
import { now } from '$lib/server/clock';
import { textsOfBench } from '$lib/server/content';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import { askedTraining } from '$lib/server/training/asked-training';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, depends }) => {
	depends('gw:job');
	const { db, person, shop } = locals;
	if (!person || !shop) error(401, 'Sign in first.');
	const job = await jobOrError(db, params.id);
	return benchView(job, {
		viewer: person,
		names: await namesById(db),
		at: now(),
		zone: shop.zone,
		system: shop.units,
		texts: textsOfBench,
		training: await askedTraining(db, shop),
		actId: newActId()
	});
};

export const actions: Actions = {
	act: async ({ locals, params, request }) => {
		const { db, person, shop } = locals;
		if (!person || !shop) error(401, 'Sign in first.');
		return actFromForm(db, {
			jobId: params.id,
			by: person.id,
			zone: shop.zone,
			form: await request.formData()
		});
	}
};
