import { json } from '@sveltejs/kit';
import { z } from 'zod';
import { recordSchema } from '$lib/server/record-schema';

export function GET() {
	return json({
		title: 'Glovewright record, format 1',
		...z.toJSONSchema(recordSchema, { io: 'input' })
	});
}
