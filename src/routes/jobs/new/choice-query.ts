/** The choices of an address, without what belongs to the posting of a form. */
export function choiceQuery(url: URL, changed: Record<string, string> = {}): string {
	const query = new URLSearchParams(url.searchParams);
	query.delete('/accept');
	for (const [name, value] of Object.entries(changed)) query.set(name, value);
	return query.toString();
}

/** What a form holds, as an address: a blank is a proposal and stays one, as does an untouched one. */
export function formQuery(form: FormData, isProposed: (name: string, value: string) => boolean) {
	const query = new URLSearchParams();
	for (const [name, value] of form) {
		if (typeof value === 'string' && value !== '' && !isProposed(name, value))
			query.set(name, value);
	}
	return query.toString();
}
