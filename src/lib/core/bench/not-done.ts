/** What the bench says when an act was not written: everything typed comes back with it. */
export interface NotDone {
	type: string;
	label: string;
	values: Record<string, string>;
	errors: Record<string, string>;
	/** Why the process does not take it. */
	refusal: string | null;
	/** What is asked before it is entered all the same. */
	question: string | null;
	/** What others entered meanwhile, when somebody was faster. */
	meanwhile: string[] | null;
}

const OWN = ['type', 'seq', 'id', 'units', 'knowing'];

/** The answer to a form of the bench, with the form's own values. */
export function notDone(
	given: Partial<NotDone> & Pick<NotDone, 'type' | 'label'>,
	form: FormData
): NotDone {
	// More than one value under a name, as photos have, comes back as one text.
	const values = [...new Set(form.keys())].flatMap((key) => {
		const texts = form.getAll(key).filter((value) => typeof value === 'string');
		return texts.length > 0 && !OWN.includes(key) ? [[key, texts.join(' ')] as const] : [];
	});
	return {
		errors: {},
		refusal: null,
		question: null,
		meanwhile: null,
		...given,
		values: Object.fromEntries(values)
	};
}
