import { benchTexts } from '$lib/core/bench/bench-texts';
import { readLibrary } from '$lib/core/content/library';

const files = import.meta.glob<string>('/content/**/*.md', {
	query: '?raw',
	import: 'default',
	eager: true
});

/** Everything people read, parsed once when the server starts, so bad content never serves a page. */
const library = readLibrary(files);
export const { steps, briefings, troubles, lessons, pools, caution, glossary } = library;

/** What a bench shows of them. */
export const textsOfBench = benchTexts(library);
