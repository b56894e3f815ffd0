import { json } from '@sveltejs/kit';
import { api, unfit } from '$lib/server/api';
import { savePhoto } from '$lib/server/photos';

export const POST = api(async ({ locals, request }) => {
	const bytes = new Uint8Array(await request.arrayBuffer());
	const saved = await savePhoto(locals.db, { bytes });
	if (saved.status === 'refused') throw unfit([{ path: '', message: saved.reason }]);
	return json({ hash: saved.hash }, { status: 201 });
});
