import { api } from '$lib/server/api';
import { liveStream } from '$lib/server/live-stream';

export const GET = api((event) =>
	liveStream(
		event,
		({ jobId, seq }) => ({ jobId, seq }),
		// Of no job in particular: what the board shows may be from before this line was open.
		async () => ({ jobId: null, seq: 0 })
	)
);
