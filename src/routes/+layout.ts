import { loadScreenWords } from '$lib/core/language/load-words';
import type { LayoutLoad } from './$types';

export const load: LayoutLoad = async ({ data }) => ({
	...data,
	words: await loadScreenWords(data.locale)
});
