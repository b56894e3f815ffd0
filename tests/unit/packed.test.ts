import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { packed } from '../../src/lib/server/packed';

const page = () =>
	new Response('<p>wait</p>', { headers: { 'content-type': 'text/html', etag: '"a"' } });

describe('a page on its way', () => {
	test('is packed for a reader that unpacks it, and is the same page', async () => {
		const answer = packed(page(), 'deflate, GZIP;q=0.8');
		expect(answer.headers.get('content-encoding')).toBe('gzip');
		expect(answer.headers.get('vary')).toBe('accept-encoding');
		expect(answer.headers.get('etag')).toBe('W/"a"');
		expect(gunzipSync(Buffer.from(await answer.arrayBuffer())).toString()).toBe('<p>wait</p>');
	});

	test.each(['gzip, deflate, br, zstd', 'br;q=0.1, gzip'])(
		'is packed shorter for %s',
		async (accepts) => {
			const answer = packed(page(), accepts);
			expect(answer.headers.get('content-encoding')).toBe('br');
			const came = Buffer.from(await answer.arrayBuffer());
			expect(brotliDecompressSync(came).toString()).toBe('<p>wait</p>');
		}
	);

	test('is packed the other way where the first is refused', () => {
		const answer = packed(page(), 'br;q=0, gzip');
		expect(answer.headers.get('content-encoding')).toBe('gzip');
	});

	// RFC 9110, section 12.5.3: a weight of 0 is "not acceptable".
	test.each([null, '', 'identity', 'gzip;q=0', 'gzip; q=0.000', 'x-gzipped'])(
		'is left as it is for %s',
		async (accepts) => {
			const answer = packed(page(), accepts);
			expect(answer.headers.has('content-encoding')).toBe(false);
			expect(answer.headers.get('vary')).toBe('accept-encoding');
			expect(await answer.text()).toBe('<p>wait</p>');
		}
	);

	test.each(['text/event-stream', 'image/jpeg'])('nothing else is: %s', (type) => {
		const long = { 'content-type': type, 'content-length': '100000' };
		const answer = packed(new Response('x', { headers: long }), 'gzip');
		expect(answer.headers.has('content-encoding')).toBe(false);
	});

	test.each([
		[4096, 'gzip'],
		[4095, null]
	])('of data %i bytes long: %s', async (bytes, coding) => {
		const text = JSON.stringify('x'.repeat(bytes - 2));
		const headers = { 'content-type': 'application/json', 'content-length': String(bytes) };
		const answer = packed(new Response(text, { headers }), 'gzip');
		expect(answer.headers.get('content-encoding')).toBe(coding);
		expect(answer.headers.has('content-length')).toBe(coding === null);
		const came = Buffer.from(await answer.arrayBuffer());
		expect((coding ? gunzipSync(came) : came).toString()).toBe(text);
	});
});
