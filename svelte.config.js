import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import adapter from '@sveltejs/adapter-node';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';

/** The script that stands in every page, by its hash: asked for on its own it held the first picture up. */
const [, themeScript = ''] =
	/<script>([\s\S]*?)<\/script>/.exec(
		readFileSync(new URL('src/app.html', import.meta.url), 'utf8')
	) ?? [];
const themeHash = createHash('sha256').update(themeScript).digest('base64');

/** @type {import('@sveltejs/kit').Config} */
export default {
	preprocess: vitePreprocess(),
	compilerOptions: { runes: true },
	kit: {
		adapter: adapter({ precompress: true }),
		// Its styles come with a page: each file more to ask for held its first picture up, on a slow line by 150 ms.
		inlineStyleThreshold: 20_000,
		csp: {
			mode: 'auto',
			directives: {
				'default-src': ['self'],
				'script-src': ['self', `sha256-${themeHash}`],
				// The one inline style that SvelteKit itself writes, on its route announcer.
				'style-src': [
					'self',
					'unsafe-hashes',
					'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='
				],
				'img-src': ['self', 'data:', 'blob:'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'worker-src': ['self'],
				'object-src': ['none'],
				'base-uri': ['none'],
				'form-action': ['self'],
				'frame-ancestors': ['none']
			}
		}
	}
};
