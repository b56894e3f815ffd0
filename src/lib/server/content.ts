import { benchTexts } from '$lib/core/bench/bench-texts';
import { readAll } from '$lib/core/content/read-all';
import { LANGS } from '$lib/core/language/locale';

const files = import.meta.glob<string>('/content/**/*.md', {
	query: '?raw',
	import: 'default',
	eager: true
});

/** Everything people read, parsed once when the server starts, so bad content never serves a page. */
const { library, byLang } = readAll(files);
export const { steps, briefings, troubles, lessons, pools, caution, glossary } = library;

/** Steps, briefings, troubles and cautions, by language. */
export const textsByLang = byLang;

/** What a bench shows of them, by language. */
export const benchTextsByLang = {
	en: benchTexts(byLang.en),
	es: benchTexts(byLang.es, 'es')
} satisfies Record<(typeof LANGS)[number], unknown>;

/** What a bench shows in English. */
export const textsOfBench = benchTextsByLang.en;
