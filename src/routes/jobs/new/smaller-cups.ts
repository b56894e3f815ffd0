import type { Plan } from '$lib/core/plan/plan';
import { displayQuantity } from '$lib/core/quantity/display';
import { choiceQuery } from './choice-query';

const CUPS = [
	['detail', 'detailCupG'],
	['build', 'buildCupG'],
	['shell', 'shellCupG']
] as const;

/** Links to the same plan with cups that don't get so hot, where smaller ones help. */
export function smallerCups({ cure, inputs }: Plan, url: URL): { href: string; text: string }[] {
	return (cure?.materials ?? []).flatMap(({ materialId, materialName, smallerCupG }) => {
		if (smallerCupG === undefined) return [];
		const chosen = CUPS.filter(([place]) => inputs.materials[place]?.id === materialId).map(
			([, key]) => [key, String(smallerCupG)] as const
		);
		const cup = displayQuantity(smallerCupG, 'g', inputs.shop.units);
		return [
			{
				href: `?${choiceQuery(url, Object.fromEntries(chosen))}`,
				text: `Plan cups of up to ${cup} of ${materialName}`
			}
		];
	});
}
