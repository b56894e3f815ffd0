import type { LiveLine } from '$lib/device/live-line.svelte';
import { readAnew } from '$lib/device/read-anew';

/** Many acts at once are one look at the board. */
const NEWS_MS = 400;

/** Looks at the board anew whenever something is entered anywhere in the shop, until the returned function is called. */
export function followBoard(line: LiveLine): () => void {
	let timer: ReturnType<typeof setTimeout> | undefined;
	const look = () => {
		timer ??= setTimeout(() => {
			timer = undefined;
			void readAnew('board:lines');
		}, NEWS_MS);
	};
	// What can wait is planned from the present on, so after hours in a pocket the days are old.
	const wake = () => {
		if (document.visibilityState === 'visible') look();
	};
	const stop = line.follow('/api/live', look);
	document.addEventListener('visibilitychange', wake);
	return () => {
		clearTimeout(timer);
		document.removeEventListener('visibilitychange', wake);
		stop();
	};
}
