import { loadWords } from '$lib/core/language/load-words';
import type { LayoutLoad } from './$types';

export const load: LayoutLoad = async ({ data }) => ({
	...data,
	words: await loadWords(data.locale)
});
