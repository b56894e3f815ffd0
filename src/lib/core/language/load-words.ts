import { langOf, type Locale } from './locale';
import { ENGLISH, type Words } from './words';

/** The words for a locale; what is not English is loaded when somebody reads it. */
export async function loadWords(locale: Locale): Promise<Words> {
	if (langOf(locale) === 'en') return { ...ENGLISH, locale };
	const { SPANISH } = await import('./es/spanish');
	return { ...SPANISH, locale };
}
