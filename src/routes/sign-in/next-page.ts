/** Where to go after signing in: a page of this app, or the board when the address says anything else. */
export function nextPage(asked: string | null): string {
	return asked && /^\/(?![/\\])[^\\\s]*$/.test(asked) ? asked : '/board';
}
