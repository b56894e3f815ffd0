import { error } from '@sveltejs/kit';
import { langOf } from '$lib/core/language/locale';
import { benchView } from '$lib/core/bench/bench-view';
import { newActId } from '$lib/server/act-id';
import { drawSection } from '$lib/screen/section/drawn-section';
import { actFromForm } from '$lib/server/bench-act';
import { now } from '$lib/server/clock';
import { benchTextsFor } from '$lib/server/content';
import { wordsOf } from '$lib/server/words';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import { askedTraining } from '$lib/server/training/asked-training';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, depends }) => {
	depends('gw:job');
	const { db, person, shop } = locals;
	if (!person || !shop) error(401, 'Sign in first.');
	const job = await jobOrError(db, params.id);
	locals.isTranslated = true;
	const at = now();
	const view = benchView(job, {
		viewer: person,
		names: await namesById(db),
		at,
		zone: shop.zone,
		system: shop.units,
		texts: benchTextsFor(langOf(locals.locale), shop.units),
		words: wordsOf(locals.locale),
		training: await askedTraining(db, shop, { personId: person.id, at }),
		actId: newActId()
	});
	const { section, system } = view;
	const { locale } = locals;
	return {
		...view,
		drawn: {
			emblem: drawSection(section, { system, isCompact: true, locale }),
			picture: drawSection(section, { system, locale })
		}
	};
};

export const actions: Actions = {
	act: async ({ locals, params, request }) => {
		const { db, person, shop } = locals;
		if (!person || !shop) error(401, 'Sign in first.');
		return actFromForm(db, {
			jobId: params.id,
			by: person.id,
			zone: shop.zone,
			form: await request.formData(),
			words: wordsOf(locals.locale)
		});
	}
};
