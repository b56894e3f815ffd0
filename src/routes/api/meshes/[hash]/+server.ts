import { api } from '$lib/server/api';
import { openMesh } from '$lib/server/mesh-files';
import { ApiProblem } from '$lib/server/problem';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async ({ locals, params }) => {
	const mesh = await openMesh(locals.db, params.hash);
	if (!mesh) {
		throw new ApiProblem({ status: 404, code: 'no-mesh', detail: 'There is no such mesh file.' });
	}
	return new Response(mesh.stream, {
		headers: {
			'content-type': 'application/octet-stream',
			'content-length': String(mesh.size),
			'content-disposition': 'attachment',
			// Named by its own hash, so it never changes.
			'cache-control': 'private, max-age=31536000, immutable'
		}
	});
});
