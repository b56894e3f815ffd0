/** Where the coat wets: a plain clay gray. */
const WETTED = [0.78, 0.77, 0.74] as const;
/** From the least to the greatest depth, light to dark so that it reads without color too. */
const SHALLOW = [0.86, 0.74, 0.93] as const;
const DEEP = [0.23, 0.04, 0.36] as const;

/** Color of a depth of air, each part from 0 to 1. */
export function depthColor(depthMm: number, deepestMm: number): [number, number, number] {
	if (!(depthMm > 0)) return [...WETTED];
	const part = deepestMm > 0 ? Math.min(1, depthMm / deepestMm) : 0;
	return [0, 1, 2].map((k) => SHALLOW[k]! + (DEEP[k]! - SHALLOW[k]!) * part) as [
		number,
		number,
		number
	];
}

/** The same for a legend. */
export function depthFill(depthMm: number, deepestMm: number): string {
	const parts = depthColor(depthMm, deepestMm).map((part) => Math.round(255 * part));
	return `rgb(${parts.join(' ')})`;
}
