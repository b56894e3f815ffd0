import { api } from '$lib/server/api';
import { liveResponse } from '$lib/server/live-response';

export const GET = api(() => liveResponse(({ jobId, seq }) => ({ jobId, seq })));
