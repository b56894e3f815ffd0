import type { RequestEvent } from '@sveltejs/kit';
import { expect, test } from 'vitest';
import { turnAway } from '../../src/lib/server/request-guard';

function posted(path: string, bytes: number): RequestEvent {
	const url = new URL(path, 'http://localhost');
	const headers = { origin: url.origin, 'content-length': String(bytes) };
	// Only what the guard looks at: a body as long as the header says would be megabytes for nothing.
	const event = {
		url,
		request: new Request(url, { method: 'POST', headers }),
		locals: { requestId: 'r1', address: '192.0.2.7' }
	};
	return event as unknown as RequestEvent;
}

test.each([
	['/api/meshes/parts?upload=a&part=0', 4_000_000],
	['/api/photos', 6_000_000],
	['/api/meshes', 2_000_000]
])(
	'%s takes up to %i bytes, and says so of a longer body before it is read',
	async (path, most) => {
		expect(turnAway(posted(path, most))).toBeNull();
		const refused = turnAway(posted(path, most + 1));
		expect(refused?.status).toBe(413);
		expect(await refused?.json()).toMatchObject({
			status: 413,
			code: 'too-large',
			detail: `The request has ${most + 1} bytes; accepted here: up to ${most}.`,
			requestId: 'r1'
		});
	}
);
