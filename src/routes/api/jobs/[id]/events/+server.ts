import { json } from '@sveltejs/kit';
import { eventSchema } from '$lib/core/process/events';
import { postAct } from '$lib/server/act';
import { api, fit, noSuchJob, personOf, readJson } from '$lib/server/api';
import { afterSchema, newEventSchema } from '$lib/server/api-schemas';
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

export const POST = api<RequestEvent>(async ({ locals, params, request }) => {
	const by = personOf(locals).id;
	const { id, seq, event } = await readJson(request, newEventSchema);
	// Judged field by field here, so that the answer can name each; the append judges the whole.
	fit(eventSchema, { at: now(), ...event, by });
	return appendAnswer(await postAct(locals.db, { jobId: params.id, id, seq, by, event }));
});
