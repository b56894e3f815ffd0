import { bench } from './en/bench';
import { controls } from './en/controls';
import { frame } from './en/frame';
import { titles } from './en/titles';
import type { Words } from './words';

/** What a page itself says. The rest is said where a job is judged: on the server, or on a device without it. */
export type ScreenWords = Pick<
	Words,
	'lang' | 'locale' | 'quoted' | 'bench' | 'controls' | 'frame' | 'titles'
> & {
	/** Those of the reading room in another language; the page of a text brings the English ones itself. */
	reading?: Words['reading'];
};

/** American English for pages, without the words of the process: every page loads these. */
export const ENGLISH_ON_SCREEN: ScreenWords = {
	lang: 'en',
	locale: 'en-US',
	quoted: (text) => `“${text}”`,
	bench,
	controls,
	frame,
	titles
};
