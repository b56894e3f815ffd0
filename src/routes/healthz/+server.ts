import { json } from '@sveltejs/kit';
import type { RequestEvent } from './$types';

export async function GET({ locals }: RequestEvent) {
	await locals.db.selectFrom('schema_version').select('version').execute();
	return json({ ok: true });
}
