/** What an error page says: what happened, and what whoever reads it can do. */
interface ErrorWords {
	title: string;
	advice: string;
}

/**
 * The words of an error page.
 *
 * @param status - HTTP status; null when the page broke in the browser
 * @param role - of who reads it, so that nobody is sent to themselves
 */
export function errorWords(status: number | null, role?: string): ErrorWords {
	const isInCharge = role === 'supervisor' || role === 'owner';
	const helper = isInCharge ? 'whoever looks after this server' : 'your supervisor';
	if (status === null) {
		return {
			title: 'This page could not be drawn',
			advice: `Nothing that was confirmed is lost. Load it again; if it comes back, tell ${helper} the address, the time and the words above.`
		};
	}
	if (status >= 500) {
		return {
			title: 'Something broke on our side',
			advice: `Nothing that was confirmed is lost. Try again; if it comes back, tell ${helper} the request above and the time.`
		};
	}
	const titles: Record<number, string> = {
		401: 'Sign in first',
		403: 'This sheet is not yours to open',
		404: 'There is no such sheet'
	};
	return {
		title: titles[status] ?? 'This cannot be done',
		advice: 'Check the address, or go back to the board.'
	};
}
