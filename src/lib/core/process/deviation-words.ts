import { deviations as english, type DeviationWords } from '../language/en/deviations';
import type { Words } from '../language/words';
import type { Deviation } from './context';
import { titleInWords } from './steps/batch-words';

/** A message of the catalog with what it is given, so that it can be said in any language. */
export type Said = {
	[Key in keyof DeviationWords]: { key: Key; given: Parameters<DeviationWords[Key]>[0] };
}[keyof DeviationWords];

type Say = (given: Said['given']) => string;

/** A deviation in English, as the record keeps it. */
export function inEnglish({ key, given }: Said): string {
	// Key and argument belong together by the type of `Said`, which a call by key cannot see.
	return (english[key] as Say)(given);
}

/** A deviation in the reader's words; what somebody wrote in it stays as written. */
export function deviationText({ said }: Pick<Deviation, 'said'>, w: Words): string {
	const { key, given } = said;
	const titled =
		given && 'title' in given ? { ...given, title: titleInWords(given.title, w) } : given;
	return (w.deviations[key] as Say)(titled);
}
