import { loadTalkWords } from '$lib/core/language/load-talk-words';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ data, parent }) => {
	const { locale } = await parent();
	return { ...data, locale, said: await loadTalkWords(locale) };
};
