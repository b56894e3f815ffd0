import { api, readJson } from '$lib/server/api';
import { appendAnswer } from '$lib/server/append-answer';
import { signatureSchema, signJob } from '$lib/server/sign';
import type { RequestEvent } from './$types';

export const POST = api<RequestEvent>(async ({ locals, params, request, getClientAddress }) => {
	const signature = await readJson(request, signatureSchema);
	const address = getClientAddress();
	return appendAnswer(await signJob(locals.db, { jobId: params.id, signature, address }));
});
