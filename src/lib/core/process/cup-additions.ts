import { additionG } from '../laws/proportioning';
import type { Coat, Plan, ShellRound } from '../plan/plan';
import type { PlanInputs } from '../plan/inputs';

type Target = NonNullable<PlanInputs['additions']>[number]['to'];

/** Thickener, pigment or accelerator for one cup, in grams, on top of its parts. */
export interface CupAddition {
	name: string;
	massG: number;
}

/** What the plan adds to a cup, or to the pour, of `baseG` grams; empty for most. */
export function cupAdditions({ inputs }: Plan, to: Target, baseG: number): CupAddition[] {
	return (inputs.additions ?? [])
		.filter((addition) => addition.to === to)
		.map(({ name, partsPerHundred }) => ({ name, massG: additionG({ baseG, partsPerHundred }) }));
}

/** What additions call a coat or shell round. */
export function additionTarget(batch: Coat | ShellRound): Target {
	return 'kind' in batch ? batch.kind : 'shell';
}
