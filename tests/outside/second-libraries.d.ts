/** The part of `odex` that is used as a second opinion: one solver, from x0 to x1. */
declare module 'odex' {
	export class Solver {
		constructor(dimension: number);
		absoluteTolerance: number;
		relativeTolerance: number;
		solve(
			derivative: (x: number, y: number[]) => number[],
			x0: number,
			y0: number[],
			x1: number
		): { y: number[] };
	}
}

/** The part of `js-quantities` that is used as a second opinion. */
declare module 'js-quantities' {
	interface Quantity {
		to(unit: string): Quantity;
		scalar: number;
	}
	export default function quantity(text: string): Quantity;
}
