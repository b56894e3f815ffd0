import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { z } from 'zod';

const manifest = z
	.object({
		start_url: z.string(),
		icons: z.array(
			z.object({ src: z.string(), sizes: z.string(), type: z.string(), purpose: z.string() })
		)
	})
	.parse(JSON.parse(readFileSync('static/manifest.webmanifest', 'utf8')));

const SIGNATURE = '89504e470d0a1a0a';

/** Width and height that a PNG says of itself. Source: ISO/IEC 15948 (2004), 11.2.2 IHDR. */
function pngSize(bytes: Buffer): string {
	expect(bytes.toString('hex', 0, 8)).toBe(SIGNATURE);
	expect(bytes.toString('latin1', 12, 16)).toBe('IHDR');
	return `${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`;
}

// What a browser asks before it offers to install. Source: W3C, Web Application Manifest; from memory.
test('an app that is installed has icons of 192 and 512 px, and one that may be cut round', () => {
	const pngs = manifest.icons.filter(({ type }) => type === 'image/png');
	expect(pngs.map(({ sizes, purpose }) => `${sizes} ${purpose}`).toSorted()).toEqual([
		'192x192 any',
		'512x512 any',
		'512x512 maskable'
	]);
	for (const { src, sizes } of pngs) {
		expect([src, pngSize(readFileSync(`static${src}`))]).toEqual([src, sizes]);
	}
});
