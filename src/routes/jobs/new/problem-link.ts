import type { ChosenSheets } from '$lib/core/materials/compatibility';
import type { PlanProblem } from '$lib/core/plan/plan-error';
import { SLOTS } from './choices';

interface Chosen {
	sheets: ChosenSheets | null;
	pattern: { id: string; name: string } | null;
}

/** A problem with where it is put right, in words: the data sheet or the pattern that it lies in. */
export function linkedProblem({ path, message }: PlanProblem, { sheets, pattern }: Chosen) {
	const [root, place] = path.split('.');
	const slot = root === 'materials' && SLOTS.find((each) => each.slot === place);
	const sheet = slot ? sheets?.[slot.slot] : undefined;
	if (slot && sheet) {
		const text = `${slot.label}: open the data sheet of ${sheet.name}`;
		return { message, link: { href: `/materials/${sheet.id}`, text } };
	}
	if (root === 'pattern' && pattern) {
		const text = `Open the pattern ${pattern.name}`;
		return { message, link: { href: `/patterns/${pattern.id}`, text } };
	}
	return { message, link: null };
}
