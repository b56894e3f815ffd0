import { toolboxTalk } from '$lib/core/bench/toolbox-talk';
import { containers } from '$lib/core/language/en/containers';
import { now } from '$lib/server/clock';
import { steps, textsOfBench } from '$lib/server/content';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import type { PageServerLoad } from './$types';

const phases = Object.fromEntries([...steps].map(([slug, { phase }]) => [slug, phase]));

export const load: PageServerLoad = async ({ locals, params }) => {
	const [{ state, plan }, names] = await Promise.all([
		jobOrError(locals.db, params.id),
		namesById(locals.db)
	]);
	return {
		jobId: params.id,
		title: state.title,
		now: now(),
		zone: plan.inputs.shop.zone,
		people: plan.people,
		names,
		containersHow: containers.how,
		talk: toolboxTalk(plan, state, { ...textsOfBench, phases })
	};
};
