import type { Plan } from '$lib/core/plan/plan';
import { lawLimit } from './law-limit';

/** Materials whose cup no law could follow, with the limit that was met. */
export function missingCups(plan: Plan): { name: string; limit: string }[] {
	const { detail, build, shell, casting } = plan.inputs.materials;
	const names = [detail, build, shell].flatMap((sheet) => (sheet ? [sheet.name] : []));
	const part = lawLimit(plan, `Temperature of the first part of ${casting.name}`);
	const cups = [...new Set(names)].flatMap((name) => {
		const limit = lawLimit(plan, `Temperature of a cup of ${name}`);
		return limit ? [{ name, limit }] : [];
	});
	return part ? [...cups, { name: `First part of ${casting.name}`, limit: part }] : cups;
}
