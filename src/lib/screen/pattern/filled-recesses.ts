/** The fields for a pattern's recesses, as texts; '' for blank. */
export interface RecessTexts {
	narrowestRecessMm: string;
	deepestRecessMm: string;
}

/**
 * What stands in the fields once a mesh shows these recesses: what the mesh filled in is filled in anew, or emptied where
 * the pattern as it lies has none; what a person typed stays.
 *
 * @param typed - what stands there
 * @param filled - what the mesh filled in last
 * @param found - what it shows
 */
export function refilledRecesses(
	typed: RecessTexts,
	filled: RecessTexts,
	found: RecessTexts
): RecessTexts {
	const one = (key: keyof RecessTexts): string =>
		typed[key] === filled[key] ? found[key] : typed[key];
	return { narrowestRecessMm: one('narrowestRecessMm'), deepestRecessMm: one('deepestRecessMm') };
}
