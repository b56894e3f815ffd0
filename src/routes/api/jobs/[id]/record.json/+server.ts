import { canonicalJson } from '$lib/core/log/canonical';
import { api, noSuchJob } from '$lib/server/api';
import { now } from '$lib/server/clock';
import { exportRecord } from '$lib/server/record';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async ({ locals, params }) => {
	const record = await exportRecord(locals.db, params.id, now());
	if (!record) throw noSuchJob(params.id);
	return new Response(canonicalJson(record), {
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'content-disposition': `attachment; filename="record-${params.id.slice(0, 8)}.json"`
		}
	});
});
