import { SPANISH } from '$lib/core/language/es/spanish';
import { langOf, type Locale } from '$lib/core/language/locale';
import { ENGLISH, type Words } from '$lib/core/language/words';

/** The words for a locale; the server has all languages at hand. */
export function wordsOf(locale: Locale): Words {
	return { ...(langOf(locale) === 'es' ? SPANISH : ENGLISH), locale };
}
