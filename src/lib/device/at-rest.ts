/** By then whoever came to press something has pressed it, and a slow line has brought the page. A choice. */
const REST_MS = 7000;

/** Resolves once the page has been here for a while and the browser has nothing to do; at once when it is left. */
export async function atRest(left: AbortSignal): Promise<void> {
	await new Promise<void>((resolve) => {
		const timer = setTimeout(resolve, REST_MS);
		left.addEventListener('abort', () => {
			clearTimeout(timer);
			resolve();
		});
	});
	// Not every browser tells when it is idle.
	if (left.aborted || !('requestIdleCallback' in globalThis)) return;
	await new Promise<void>((resolve) => requestIdleCallback(() => resolve(), { timeout: REST_MS }));
}
