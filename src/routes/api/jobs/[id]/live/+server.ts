import { api, noSuchJob } from '$lib/server/api';
import { getJob } from '$lib/server/jobs.repository';
import { liveStream } from '$lib/server/live-stream';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async (event) => {
	const { locals, params } = event;
	const job = await getJob(locals.db, params.id);
	if (!job) throw noSuchJob(params.id);
	return liveStream(
		event,
		({ jobId, seq }) => (jobId === job.id ? { seq } : null),
		async () => ({ seq: (await getJob(locals.db, job.id))?.headSeq ?? 0 })
	);
});
