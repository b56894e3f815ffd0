import { api, noSuchJob } from '$lib/server/api';
import { getJob } from '$lib/server/jobs.repository';
import { liveResponse } from '$lib/server/live-response';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async ({ locals, params }) => {
	const job = await getJob(locals.db, params.id);
	if (!job) throw noSuchJob(params.id);
	return liveResponse(
		({ jobId, seq }) => (jobId === job.id ? { seq } : null),
		async () => ({ seq: (await getJob(locals.db, job.id))?.headSeq ?? 0 })
	);
});
