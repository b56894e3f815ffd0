/** Whether the page in view comes from this device, not from the server. */
export function isKeptPage(): boolean {
	return typeof document !== 'undefined' && document.documentElement.hasAttribute('data-kept');
}
