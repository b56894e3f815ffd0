import { json } from '@sveltejs/kit';
import { postAct } from '$lib/server/act';
import { doerProblem } from '$lib/server/doer-problem';
import { api, fit, noSuchJob, personOf, readJson } from '$lib/server/api';
import { afterSchema, newEventSchema } from '$lib/server/api-schemas';
import { appendAnswer } from '$lib/server/append-answer';
import { getJob } from '$lib/server/jobs.repository';
import { ApiProblem } from '$lib/server/problem';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async ({ locals, params, url }) => {
	const { after } = fit(afterSchema, { after: url.searchParams.get('after') ?? '0' });
	const job = await getJob(locals.db, params.id);
	if (!job) throw noSuchJob(params.id);
	return json({ headSeq: job.headSeq, events: job.log.slice(after) });
});

export const POST = api<RequestEvent>(async ({ locals, params, request }) => {
	const by = personOf(locals).id;
	const { id, seq, event } = await readJson(request, newEventSchema);
	const problem = doerProblem(event, by);
	if (problem) throw new ApiProblem(problem);
	return appendAnswer(await postAct(locals.db, { jobId: params.id, id, seq, by, event }));
});
