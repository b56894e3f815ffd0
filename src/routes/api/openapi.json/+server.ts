import { json } from '@sveltejs/kit';
import { openApiDocument } from '$lib/server/openapi';

export function GET() {
	return json(openApiDocument());
}
