import { error, json } from '@sveltejs/kit';
import { langOf } from '$lib/core/language/locale';
import { now } from '$lib/server/clock';
import { benchTextsFor } from '$lib/server/content';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import { askedTraining } from '$lib/server/training/asked-training';
import type { RequestHandler } from './$types';

/** What a bench keeps of a mold, to go on when the line to the server drops. */
export const GET: RequestHandler = async ({ locals, params }) => {
	const { db, person, shop } = locals;
	if (!person || !shop) error(401, 'Sign in first.');
	const { id, plan, planHash, log } = await jobOrError(db, params.id);
	return json({
		jobId: id,
		plan,
		planHash,
		log,
		names: await namesById(db),
		zone: shop.zone,
		system: shop.units,
		texts: benchTextsFor(langOf(locals.locale), shop.units),
		training: await askedTraining(db, shop, { personId: person.id, at: now() })
	});
};
