import { json } from '@sveltejs/kit';
import { mayEdit } from '$lib/screen/form/may-edit';
import { api, readJson, unfit } from '$lib/server/api';
import { newMeshSchema } from '$lib/server/api-schemas';
import { saveMesh } from '$lib/server/mesh-files';
import { ApiProblem } from '$lib/server/problem';

export const POST = api(async ({ locals, request }) => {
	if (!mayEdit(locals.person)) {
		throw new ApiProblem({
			status: 403,
			code: 'may-not-edit',
			detail: 'Patterns are added by a mold maker, a supervisor or the owner.'
		});
	}
	const saved = await saveMesh(locals.db, await readJson(request, newMeshSchema));
	if (saved.status === 'refused') throw unfit([{ path: '', message: saved.reason }]);
	const { hash, format, size } = saved;
	return json({ hash, format, size }, { status: 201 });
});
