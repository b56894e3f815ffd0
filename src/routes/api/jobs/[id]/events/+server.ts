import { json } from '@sveltejs/kit';
import { eventSchema } from '$lib/core/process/events';
import { postAct } from '$lib/server/act';
import { api, fit, noSuchJob, personOf, readJson } from '$lib/server/api';
import { afterSchema, newEventSchema } from '$lib/server/api-schemas';
import { ApiProblem } from '$lib/server/problem';
import { appendAnswer } from '$lib/server/append-answer';
import { now } from '$lib/server/clock';
import { getJob } from '$lib/server/jobs.repository';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async ({ locals, params, url }) => {
	const { after } = fit(afterSchema, { after: url.searchParams.get('after') ?? '0' });
	const job = await getJob(locals.db, params.id);
	if (!job) throw noSuchJob(params.id);
	return json({ headSeq: job.headSeq, events: job.log.slice(after) });
});

/** What a device kept for one person must not go out under the name of the next one at it. */
function notTheDoer(): ApiProblem {
	return new ApiProblem({
		status: 403,
		code: 'not-the-doer',
		detail:
			'Somebody else did this than who is signed in. Leave "by" out, or sign in as that person.'
	});
}

export const POST = api<RequestEvent>(async ({ locals, params, request }) => {
	const by = personOf(locals).id;
	const { id, seq, event } = await readJson(request, newEventSchema);
	if (event.by !== undefined && event.by !== by) throw notTheDoer();
	// Judged field by field here, so that the answer can name each; the append judges the whole.
	fit(eventSchema, { at: now(), ...event, by });
	return appendAnswer(await postAct(locals.db, { jobId: params.id, id, seq, by, event }));
});
