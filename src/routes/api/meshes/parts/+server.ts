import { json } from '@sveltejs/kit';
import { mayEdit } from '$lib/screen/form/may-edit';
import { api, fit, unfit } from '$lib/server/api';
import { meshPartSchema } from '$lib/server/api-schemas';
import { keepPart } from '$lib/server/mesh-files';
import { ApiProblem } from '$lib/server/problem';

export const POST = api(async ({ locals, request, url }) => {
	if (!mayEdit(locals.person)) {
		throw new ApiProblem({
			status: 403,
			code: 'may-not-edit',
			detail: 'Patterns are added by a mold maker, a supervisor or the owner.'
		});
	}
	const place = fit(meshPartSchema, Object.fromEntries(url.searchParams));
	const bytes = new Uint8Array(await request.arrayBuffer());
	const kept = await keepPart(locals.db, { ...place, bytes });
	if (kept.status === 'refused') throw unfit([{ path: '', message: kept.reason }]);
	return json({ part: place.part }, { status: 201 });
});
