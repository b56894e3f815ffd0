/**
 * Tells a query that was asked for elsewhere (a link, the way back) from the page's own and from one that is only
 * read anew, so that a form being filled in is put back by the first alone. Queries are the search part of an address.
 */
export class AskedQuery {
	#asked: string;
	#shown: string;

	constructor(shown: string) {
		this.#asked = shown;
		this.#shown = shown;
	}

	/** Notes what the form itself asks for. */
	ask(search: string): void {
		this.#asked = search;
	}

	/** Whether the form must take over the query that the page shows now. */
	isNews(search: string): boolean {
		if (search === this.#shown) return false;
		this.#shown = search;
		if (search === this.#asked) return false;
		this.#asked = search;
		return true;
	}
}
