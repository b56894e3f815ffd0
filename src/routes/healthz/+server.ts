import { json } from '@sveltejs/kit';

/** The process is up and answers; nothing else is asked. Whether it can work is at /readyz. */
export function GET() {
	return json({ ok: true });
}
