import type { Plan } from '$lib/core/plan/plan';

/**
 * Why a number is missing: the limit of the law that was met, as the plan's warning says it.
 *
 * @param about - what the warning is about, for example "Bulge of the frame"
 * @returns null when no law's limit left this number out
 */
export function lawLimit({ warnings }: Pick<Plan, 'warnings'>, about: string): string | null {
	const start = `${about}: no number is given. `;
	const found = warnings.find(({ code, text }) => code === 'law-limit' && text.startsWith(start));
	return found ? found.text.slice(start.length) : null;
}
