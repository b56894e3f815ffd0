import { LANGS, type Lang } from '../language/locale';
import { readLibrary, type Files, type Library } from './library';
import { readTranslation, type Translation } from './translation';

/** Everything people read, and what of it there is in each language. */
export interface Content {
	library: Library;
	byLang: Readonly<Record<Lang, Translation>>;
}

/**
 * Reads and cross-checks all content in all languages.
 *
 * @throws Error that lists every problem: file, field, reason
 */
export function readAll(files: Files): Content {
	const library = readLibrary(files);
	const entries = LANGS.map((lang): [Lang, Translation] => [
		lang,
		lang === 'en' ? library : readTranslation(files, library, lang)
	]);
	return { library, byLang: Object.fromEntries(entries) as Record<Lang, Translation> };
}
