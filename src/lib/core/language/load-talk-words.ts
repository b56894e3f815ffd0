import type { TalkWords } from './en/talk';
import { langOf, type Locale } from './locale';

/** What the sheet of a talk at a mold says; only its page needs it. */
export async function loadTalkWords(locale: Locale): Promise<TalkWords> {
	const { talk } = langOf(locale) === 'es' ? await import('./es/talk') : await import('./en/talk');
	return talk;
}
