import { json } from '@sveltejs/kit';
import { readiness } from '$lib/server/ready';
import { dataFolder } from '$lib/server/store';
import type { RequestEvent } from './$types';

/** Whether this server can take work: 200, or 503 with the checks that failed. */
export async function GET({ locals }: RequestEvent) {
	const state = await readiness(locals.db, { folder: dataFolder(), schema: locals.schema });
	return json(state, { status: state.ready ? 200 : 503 });
}
