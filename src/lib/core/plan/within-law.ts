import { limitWords } from './limit-words';
import type { PlanWarning } from './plan';
import { warn, type Draft } from './trace';

/**
 * What a law answers, or null and a warning that names the limit when the inputs lie outside it, so
 * that a number is missing in the open instead of being wrong.
 */
export function withinLaw<T>(
	draft: Draft,
	where: PlanWarning['where'],
	what: string,
	compute: () => T
): T | null {
	try {
		return compute();
	} catch (error) {
		if (!(error instanceof RangeError)) throw error;
		const limit = limitWords(error.message, draft.inputs.shop.units);
		warn(draft, 'note', 'law-limit', where, `${what}: no number is given. ${limit}.`);
		return null;
	}
}
