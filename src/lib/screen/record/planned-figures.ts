import type { Plan } from '$lib/core/plan/plan';
import type { Figure } from '$lib/core/quantity/figure';

/** Traces of what a frozen plan had asked for, by the words that the record has for it. */
export interface PlannedFigures {
	/** By id of the coat or round: "massG", "thicknessMm", "workingS", and "part A" for a cup's target. */
	batches: Record<string, Record<string, Figure>>;
	/** By what was waited for. */
	waits: Record<string, { planned?: Figure; closes?: Figure }>;
	leastMm?: Figure;
	shellMm?: Figure;
}

/** The plan's traces that a record shows; an old plan without them gives none, and its numbers stand plain. */
export function plannedFigures(plan: Plan): PlannedFigures {
	const at = (path: string): Figure | undefined => plan.figures[path];
	const some = <T extends object>(found: T): T =>
		Object.fromEntries(Object.entries(found).filter(([, figure]) => figure !== undefined)) as T;
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
	const each = (count: number, what: (n: number) => string, path: string) =>
		Array.from({ length: count }, (_, i) => [what(i + 1), some({ planned: at(path) })]);
	const waits = [
		...each(plan.release.waxCoats, (n) => `Wax, coat ${n}: haze`, 'release.waxHazeS'),
		...each(plan.release.filmPasses, (n) => `Film, pass ${n}: dry`, 'release.filmDryS'),
		...plan.coats.flatMap(({ title }, i) => [
			[`${title}: brush back`, some({ planned: at(`coats.${i}.brushBackS`) })],
			[
				`${title}: fingertip test`,
				some({ planned: at(`coats.${i}.tackTestS`), closes: at(`coats.${i}.windowClosesS`) })
			]
		]),
		['Glove cure', some({ planned: at('gloveCure.testS') })],
		['Shell cure', some({ planned: at('shellCure.testS') })]
	];
	return {
		batches: Object.fromEntries(batches),
		waits: Object.fromEntries(waits),
		...some({ leastMm: at('glove.leastMm'), shellMm: at('shell.thicknessMm') })
	};
}
