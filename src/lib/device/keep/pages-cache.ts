/** Name of the cache of pages as they were last seen; a page fits the app it came with. */
export function pagesCache(version: string): string {
	return `pages ${version}`;
}
