import { invalidate } from '$app/navigation';
import { navigating } from '$app/state';

/**
 * Reads anew what a page's load took under `key`. A way to another page that has begun is let end first:
 * reading anew meanwhile would call it off, and a tap on a link would lead nowhere.
 */
export async function readAnew(key: string): Promise<void> {
	await navigating.complete?.catch(() => undefined);
	await invalidate(key);
}
