import { bench } from '$lib/core/language/en/bench';
import type { ActField } from '$lib/core/process/step';

/** Acts whose optional words are what the reader wants: nothing of them is folded away. */
const WHOLE = ['mold.marked', 'trouble.reported', 'hold.requested', 'job.takenOver'];

interface FoldedFields {
	shown: ActField[];
	/** Asked of nobody, and seldom filled in: behind one line. */
	folded: ActField[];
}

/** Parts what an act must be told from what it may be told, so that its button stays in reach. */
export function foldFields(type: string, fields: readonly ActField[]): FoldedFields {
	if (WHOLE.includes(type)) return { shown: [...fields], folded: [] };
	const isAsked = ({ required, kind }: ActField) => required || kind === 'confirm';
	return { shown: fields.filter(isAsked), folded: fields.filter((field) => !isAsked(field)) };
}

/** What stands on the line that unfolds them, for example "More: where, photo". */
export function foldedLabel(
	folded: readonly ActField[],
	takesPhotos: boolean,
	said = bench
): string {
	const names = folded.map(({ label }) => label.split(/[,:]/)[0] ?? label);
	const all = [...names, ...(takesPhotos ? [said.photo] : [])].join(', ').toLowerCase();
	return said.more(all.replace('shore a', 'Shore A'));
}
