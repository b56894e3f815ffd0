import type { Coat, ShellRound } from './plan';

/** A coat or a round, with the path under which its figures stand in the plan. */
export type PlacedBatch = (Coat | ShellRound) & { path: string };

/** Every batch of a plan, coats first, with its path, for example "coats.0" or "shell.rounds.1". */
export function placedBatches(
	coats: readonly Coat[],
	rounds: readonly ShellRound[]
): PlacedBatch[] {
	return [
		...coats.map((coat, i) => ({ ...coat, path: `coats.${i}` })),
		...rounds.map((round, i) => ({ ...round, path: `shell.rounds.${i}` }))
	];
}
