import { benchTexts, type BenchTexts } from '$lib/core/bench/bench-texts';
import { readAll } from '$lib/core/content/read-all';
import type { Lang, LANGS } from '$lib/core/language/locale';
import { inShopUnits } from '$lib/core/plan/in-shop-units';
import type { UnitSystem } from '$lib/core/quantity/display';

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

const customaryBenchTexts = {
	en: inShopUnits(benchTextsByLang.en, 'US'),
	es: inShopUnits(benchTextsByLang.es, 'US')
};

/** What a bench shows of them in a shop, with its units first. */
export function benchTextsFor(lang: Lang, units: UnitSystem): BenchTexts {
	return (units === 'US' ? customaryBenchTexts : benchTextsByLang)[lang];
}

/** What a bench shows in English. */
export const textsOfBench = benchTextsByLang.en;
