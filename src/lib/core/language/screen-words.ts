import { bench } from './en/bench';
import { controls } from './en/controls';
import { frame } from './en/frame';
import type { Words } from './words';

/**
 * What a page itself says. The rest is said where a job is judged, on the server or on a device without it, or
 * by parts that bring their own English; in another language all of it is here.
 */
export type ScreenWords = Pick<
	Words,
	'lang' | 'locale' | 'quoted' | 'bench' | 'controls' | 'frame'
> &
	Partial<Words>;

/** American English for pages, without the words of the process: every page loads these. */
export const ENGLISH_ON_SCREEN: ScreenWords = {
	lang: 'en',
	locale: 'en-US',
	quoted: (text) => `“${text}”`,
	bench,
	controls,
	frame
};
