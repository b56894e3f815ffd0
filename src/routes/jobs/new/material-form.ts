import type { Pattern } from '$lib/core/geometry/pattern';
import { pairProblems, type ChosenSheets } from '$lib/core/materials/compatibility';
import type { Sheet } from '$lib/core/materials/sheet';
import { NONE, SLOTS, type Choices } from './choices';
import { refusal } from './propose-materials';

interface Given {
	pattern: Pattern | null;
	sheets: ChosenSheets | null;
	library: readonly Sheet[];
	choices: Choices;
}

/** What the materials' part of the form shows: a list for every place, and what stands against the choice. */
export function materialForm({ pattern, sheets, library, choices }: Given) {
	const slots = SLOTS.map(({ slot, kind, label, required }) => {
		const current = sheets?.[slot];
		const offered = library.filter(
			(sheet) => sheet.kind === kind && (!sheet.retired || sheet.id === current?.id)
		);
		const options = offered.map((sheet) => {
			const why = pattern && sheets ? refusal(pattern, sheets, slot, sheet) : null;
			const mark = why ? ` (refused: ${why})` : sheet.retired ? ' (retired)' : '';
			return { value: sheet.id, label: sheet.name + mark };
		});
		return {
			slot,
			label,
			required,
			options: required ? options : [{ value: NONE, label: 'None' }, ...options],
			value: current?.id ?? (required ? '' : NONE),
			isProposed: choices[slot] === '',
			/** Why what fills it is refused all the same: the library holds nothing better. */
			refused: current && pattern && sheets ? refusal(pattern, sheets, slot, current) : null,
			name: current?.name ?? '',
			shelfLifeDays: current?.shelfLifeDays ?? null
		};
	});
	return { slots, pairs: pattern && sheets ? pairProblems(pattern, sheets) : [] };
}
