import { createRequire } from 'node:module';

/** One solver, from x0 to x1. */
interface Solver {
	absoluteTolerance: number;
	relativeTolerance: number;
	solve(
		derivative: (x: number, y: number[]) => number[],
		x0: number,
		y0: number[],
		x1: number
	): { y: number[] };
}

// Required, not imported: the package carries its TypeScript, which does not compile as strictly as ours.
const { Solver } = createRequire(import.meta.url)('odex') as {
	Solver: new (dimension: number) => Solver;
};

export const ODE = 'npm library odex 2.0.4 (Gragg–Bulirsch–Stoer), equations written out beside it';

/** Values at the end, from where they stood at the beginning. */
export function solved(
	slope: (x: number, y: number[]) => number[],
	from: number[],
	until: number,
	since = 0
): number[] {
	const solver = new Solver(from.length);
	solver.absoluteTolerance = 1e-10;
	solver.relativeTolerance = 1e-10;
	return solver.solve(slope, since, from, until).y;
}
