import { api } from '$lib/server/api';
import { getPhoto } from '$lib/server/photos';
import { ApiProblem } from '$lib/server/problem';
import type { RequestEvent } from './$types';

export const GET = api<RequestEvent>(async ({ locals, params }) => {
	const photo = await getPhoto(locals.db, params.hash);
	if (!photo) {
		throw new ApiProblem({ status: 404, code: 'no-photo', detail: 'There is no such photo.' });
	}
	return new Response(new Uint8Array(photo.bytes), {
		headers: {
			'content-type': photo.type,
			// Named by its own hash, so it never changes.
			'cache-control': 'private, max-age=31536000, immutable'
		}
	});
});
