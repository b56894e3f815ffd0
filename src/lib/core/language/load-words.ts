import { langOf, type Locale } from './locale';
import { ENGLISH_ON_SCREEN, type ScreenWords } from './screen-words';
import type { Words } from './words';

/** What pages say in a locale; what is not English is loaded when somebody reads it. */
export async function loadScreenWords(locale: Locale): Promise<ScreenWords> {
	return langOf(locale) === 'en' ? { ...ENGLISH_ON_SCREEN, locale } : loadWords(locale);
}

/** All words for a locale, for a device that judges acts itself. */
export async function loadWords(locale: Locale): Promise<Words> {
	if (langOf(locale) === 'en') return { ...(await import('./words')).ENGLISH, locale };
	const { SPANISH } = await import('./es/spanish');
	return { ...SPANISH, locale };
}
