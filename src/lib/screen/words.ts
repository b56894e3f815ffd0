import { getContext, setContext } from 'svelte';
import { ENGLISH, type Words } from '$lib/core/language/words';

const KEY = Symbol('words');

/** Lets every component below this one speak the reader's language, where the page does. */
export function shareWords(words: () => Words): void {
	setContext(KEY, words);
}

/** The words of the page at hand, to be read anew when the page changes; English where nobody has said. */
export function getWords(): () => Words {
	return getContext<(() => Words) | undefined>(KEY) ?? (() => ENGLISH);
}
