import { json } from '@sveltejs/kit';
import { benchStep } from '$lib/core/process/bench-step';
import { jobSummary } from '$lib/core/process/summary';
import { api, noSuchJob, personOf } from '$lib/server/api';
import { now } from '$lib/server/clock';
import { getJob } from '$lib/server/jobs.repository';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async ({ locals, params }) => {
	const job = await getJob(locals.db, params.id);
	if (!job) throw noSuchJob(params.id);
	const { id, openedAt, plan, planHash, log, headSeq, headHash, state } = job;
	return json({
		id,
		openedAt,
		plan,
		planHash,
		log,
		headSeq,
		headHash,
		summary: jobSummary(state),
		step: benchStep(state, { by: personOf(locals).id, at: now() })
	});
});
