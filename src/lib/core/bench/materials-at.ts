import type { PhaseId, StepSlug } from '../content/vocabulary';
import type { Sheet } from '../materials/sheet';
import type { Plan } from '../plan/plan';

export type Use = keyof Plan['inputs']['materials'];

/** Steps at which a container of what serves this purpose is open. */
export const OPEN_AT: Record<Use, readonly StepSlug[]> = {
	sealer: ['seal'],
	wax: ['wax', 'shell-release'],
	film: ['film'],
	detail: ['weigh-and-mix', 'detail-coat', 'brush-back'],
	build: ['weigh-and-mix', 'build-coat'],
	shell: ['weigh-and-mix', 'shell'],
	reinforcement: ['shell'],
	casting: ['first-pour']
};

/** Steps beside what was laid: no container is open, and it still gives off what it gives off. */
const CURES_AT: Partial<Record<Use, readonly StepSlug[]>> = {
	detail: ['tack-test', 'abrade'],
	build: ['tack-test', 'abrade', 'glove-cure'],
	shell: ['shell-cure']
};

/** What one step serves when a phase is at work; a phase that is not named narrows nothing. */
const AT_WORK: Partial<Record<PhaseId, readonly Use[]>> = {
	detail: ['detail'],
	build: ['build'],
	shell: ['shell', 'reinforcement']
};

/** Materials of a plan for a purpose that it has: a sealer that is not laid and a detail coat that is not made are out. */
export function usedSheets(plan: Plan): Array<{ use: Use; sheet: Sheet }> {
	const { inputs, coats, release, shellRelease } = plan;
	const isUsed: Partial<Record<Use, boolean>> = {
		detail: coats.some(({ kind }) => kind === 'detail'),
		sealer: release.sealerG > 0,
		wax: release.waxCoats + shellRelease.waxCoats > 0,
		film: release.filmPasses > 0
	};
	return (Object.keys(OPEN_AT) as Use[]).flatMap((use) => {
		const sheet = inputs.materials[use];
		return sheet && isUsed[use] !== false ? [{ use, sheet }] : [];
	});
}

/** Materials at a step: in open containers, and laid before and still curing. */
export function materialsAt(
	slug: StepSlug | undefined,
	phase: PhaseId | null,
	plan: Plan
): { open: Sheet[]; curing: Sheet[] } {
	const at = (table: Partial<Record<Use, readonly StepSlug[]>>) => {
		const here = usedSheets(plan).filter(({ use }) => table[use]?.some((step) => step === slug));
		const atWork = here.filter(({ use }) => phase && AT_WORK[phase]?.includes(use));
		return (atWork.length > 0 ? atWork : here).map(({ sheet }) => sheet);
	};
	return { open: at(OPEN_AT), curing: at(CURES_AT) };
}
