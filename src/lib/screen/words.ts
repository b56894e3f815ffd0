import { getContext, setContext } from 'svelte';
import { ENGLISH_ON_SCREEN, type ScreenWords } from '$lib/core/language/screen-words';

const KEY = Symbol('words');

/** Lets every component below this one speak the reader's language, where the page does. */
export function shareWords(words: () => ScreenWords): void {
	setContext(KEY, words);
}

/** The words of the page at hand, to be read anew when the page changes; English where nobody has said. */
export function getWords(): () => ScreenWords {
	return getContext<(() => ScreenWords) | undefined>(KEY) ?? (() => ENGLISH_ON_SCREEN);
}

/** Words that not every page says: the English ones come with the part that says them, others with the page's. */
export function getWordsOf<W>(english: W, find: (words: ScreenWords) => W | undefined): () => W {
	const words = getWords();
	return () => find(words()) ?? english;
}
