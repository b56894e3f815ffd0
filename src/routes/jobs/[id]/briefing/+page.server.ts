import { toolboxTalk } from '$lib/core/bench/toolbox-talk';
import { langOf } from '$lib/core/language/locale';
import { now } from '$lib/server/clock';
import { benchTextsFor, steps } from '$lib/server/content';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import { wordsOf } from '$lib/server/words';
import type { PageServerLoad } from './$types';

const phases = Object.fromEntries([...steps].map(([slug, { phase }]) => [slug, phase]));

export const load: PageServerLoad = async ({ locals, params }) => {
	const [{ state, plan }, names] = await Promise.all([
		jobOrError(locals.db, params.id),
		namesById(locals.db)
	]);
	const { locale } = locals;
	const w = wordsOf(locale);
	locals.isTranslated = true;
	return {
		isTranslated: true as const,
		jobId: params.id,
		title: state.title,
		now: now(),
		zone: plan.inputs.shop.zone,
		people: plan.people,
		names,
		containersHow: w.containers.how,
		containersTitle: w.containers.title,
		talk: toolboxTalk(
			plan,
			state,
			{ ...benchTextsFor(langOf(locale), locals.shop?.units ?? 'SI'), phases },
			w
		)
	};
};
