import { explain } from '$lib/core/plan/explain';
import type { Plan } from '$lib/core/plan/plan';
import type { Figure } from '$lib/core/quantity/figure';

/** Traces of what a frozen plan had asked for, for the places of a record. */
export interface PlannedFigures {
	/** By id of the coat or round: "massG", "thicknessMm", "workingS", and "part A" for a cup's target. */
	batches: Record<string, Record<string, Figure>>;
	/** By place in the plan, for example "coats.0.tackTestS". */
	waits: Record<string, Figure>;
	leastMm?: Figure;
	shellMm?: Figure;
}

/** The plan's traces that a record shows; an old plan without them gives none, and its numbers stand plain. */
export function plannedFigures(plan: Plan): PlannedFigures {
	// With what their inputs came from, since the record carries no plan to look it up in.
	const at = (path: string): Figure | undefined => explain(plan, path) ?? undefined;
	const some = (found: Record<string, Figure | undefined>): Record<string, Figure> =>
		Object.fromEntries(
			Object.entries(found).flatMap(([key, figure]) => (figure ? [[key, figure] as const] : []))
		);
	const rows = [
		...plan.coats.map((batch, i) => ({ batch, path: `coats.${i}` })),
		...plan.shell.rounds.map((batch, i) => ({ batch, path: `shell.rounds.${i}` }))
	];
	const batches = rows.map(({ batch, path }) => [
		batch.id,
		some({
			massG: at(`${path}.massG`),
			thicknessMm: at(`${path}.thicknessMm`),
			workingS: at(`${path}.workingS`),
			...Object.fromEntries(
				(batch.cups[0]?.parts ?? []).map(({ part }, k) => [
					`part ${part}`,
					at(`${path}.cups.0.parts.${k}.massG`)
				])
			)
		})
	]);
	const waits = [
		'release.sealerDryS',
		'release.waxHazeS',
		'release.filmDryS',
		...plan.coats.flatMap((_, i) =>
			['brushBackS', 'tackTestS', 'windowClosesS'].map((key) => `coats.${i}.${key}`)
		),
		'gloveCure.testS',
		'shellCure.testS'
	].map((path) => [path, at(path)] as const);
	return {
		batches: Object.fromEntries(batches),
		waits: some(Object.fromEntries(waits)),
		...some({ leastMm: at('glove.leastMm'), shellMm: at('shell.thicknessMm') })
	};
}
