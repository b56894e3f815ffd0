import { api } from '$lib/server/api';
import { liveResponse } from '$lib/server/live-response';

export const GET = api(() =>
	liveResponse(
		({ jobId, seq }) => ({ jobId, seq }),
		// Of no job in particular: what the board shows may be from before this line was open.
		async () => ({ jobId: null, seq: 0 })
	)
);
