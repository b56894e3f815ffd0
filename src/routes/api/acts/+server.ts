import { json } from '@sveltejs/kit';
import { postActs } from '$lib/server/acts';
import { api, personOf, readJson } from '$lib/server/api';
import { newActsSchema } from '$lib/server/api-schemas';
import { countActs } from '$lib/server/request-guard';

/** Several acts in one request, as a device sends them that was away: each judged and answered by itself. */
export const POST = api(async ({ locals, request }) => {
	const by = personOf(locals).id;
	const { acts } = await readJson(request, newActsSchema);
	countActs(locals.address, acts.length);
	const { db, requestId } = locals;
	return json({ answers: await postActs({ db, by, requestId }, acts) });
});
