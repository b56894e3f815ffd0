import type { Bvh } from './bvh';

/** How near boxes count as meeting, and after how many pairs the search gives up. */
export interface PairSearch {
	/** In the mesh's unit. */
	reach?: number;
	mostPairs: number;
}

/**
 * Hands over each pair of triangles whose boxes come within `reach` of each other, once.
 *
 * @param look - returns false to end the search
 * @returns false when the search ended before all pairs were looked at
 */
export function forMeetingPairs(
	bvh: Bvh,
	{ reach = 0, mostPairs }: PairSearch,
	look: (s: number, t: number) => boolean
): boolean {
	const { counts } = bvh;
	let pairs = 0;
	let isOver = false;
	const stack: number[] = [0, 0];
	while (stack.length > 0) {
		const b = stack.pop()!;
		const a = stack.pop()!;
		if (pairs > mostPairs || isOver) return false;
		if (a !== b && !boxesMeet(bvh, a, b, reach)) continue;
		if (counts[a]! > 0 && counts[b]! > 0) {
			pairs += forPairs(bvh, a, b, reach, (s, t) => {
				isOver ||= !look(s, t);
			});
		} else pushChildren(bvh, a, b, stack);
	}
	return !isOver;
}

function pushChildren({ counts, links }: Bvh, a: number, b: number, stack: number[]): void {
	if (a === b) stack.push(a + 1, a + 1, links[a]!, links[a]!, a + 1, links[a]!);
	else if (counts[a]! > 0) stack.push(a, b + 1, a, links[b]!);
	else if (counts[b]! > 0) stack.push(a + 1, b, links[a]!, b);
	else stack.push(a + 1, b + 1, a + 1, links[b]!, links[a]!, b + 1, links[a]!, links[b]!);
}

function boxesMeet({ boxes }: Bvh, a: number, b: number, reach: number): boolean {
	const [i, j] = [6 * a, 6 * b];
	return (
		boxes[i]! <= boxes[j + 3]! + reach &&
		boxes[j]! <= boxes[i + 3]! + reach &&
		boxes[i + 1]! <= boxes[j + 4]! + reach &&
		boxes[j + 1]! <= boxes[i + 4]! + reach &&
		boxes[i + 2]! <= boxes[j + 5]! + reach &&
		boxes[j + 2]! <= boxes[i + 5]! + reach
	);
}

function forPairs(
	{ order, starts, counts, mesh }: Bvh,
	a: number,
	b: number,
	reach: number,
	look: (s: number, t: number) => void
): number {
	let pairs = 0;
	for (let i = starts[a]!; i < starts[a]! + counts[a]!; i += 1) {
		const from = a === b ? i + 1 : starts[b]!;
		for (let j = from; j < starts[b]! + counts[b]!; j += 1) {
			pairs += 1;
			if (rangesMeet(mesh.positions, mesh.triangles, order[i]!, order[j]!, reach))
				look(order[i]!, order[j]!);
		}
	}
	return pairs;
}

/** Sifts pairs by their own boxes. */
function rangesMeet(
	p: Float64Array,
	triangles: Uint32Array,
	s: number,
	t: number,
	reach: number
): boolean {
	for (let axis = 0; axis < 3; axis += 1) {
		const a = p[3 * triangles[3 * s]! + axis]!;
		const b = p[3 * triangles[3 * s + 1]! + axis]!;
		const c = p[3 * triangles[3 * s + 2]! + axis]!;
		const d = p[3 * triangles[3 * t]! + axis]!;
		const e = p[3 * triangles[3 * t + 1]! + axis]!;
		const f = p[3 * triangles[3 * t + 2]! + axis]!;
		if (
			Math.min(a, b, c) > Math.max(d, e, f) + reach ||
			Math.min(d, e, f) > Math.max(a, b, c) + reach
		)
			return false;
	}
	return true;
}
