import { readDemo } from '$lib/core/content/demo-data';

const ROOT = '/content/demo/';

const files = import.meta.glob<string>('/content/demo/**/*.yaml', {
	query: '?raw',
	import: 'default',
	eager: true
});

/** The invented shop, parsed once when the server starts, so a broken file never serves a page. */
export const demo = readDemo(
	Object.fromEntries(Object.entries(files).map(([path, text]) => [path.slice(ROOT.length), text]))
);
