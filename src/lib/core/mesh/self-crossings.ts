import type { Bvh } from './bvh';
import { trianglesCross } from './triangles-cross';

export interface SelfCrossings {
	/** Triangles that pass through another one, each once. */
	triangles: number[];
	/** False when the search stopped at its limit of pairs: there may be more. */
	isComplete: boolean;
}

/** Pairs of triangles looked at before the search stops; a clean mesh of a million needs about a fifth. A choice. */
const MOST_PAIRS = 40_000_000;
const MOST_FOUND = 10_000;

/** Triangles of a mesh that cross others of it. */
export function selfCrossings(bvh: Bvh): SelfCrossings {
	const { mesh, counts } = bvh;
	const found = new Set<number>();
	let pairs = 0;
	const stack: number[] = [0, 0];
	while (stack.length > 0) {
		const b = stack.pop()!;
		const a = stack.pop()!;
		if (pairs > MOST_PAIRS || found.size > MOST_FOUND)
			return { triangles: sorted(found), isComplete: false };
		if (a !== b && !boxesMeet(bvh, a, b)) continue;
		if (counts[a]! > 0 && counts[b]! > 0) {
			pairs += forPairs(bvh, a, b, (s, t) => {
				if (trianglesCross(mesh, s, t)) found.add(s).add(t);
			});
		} else pushChildren(bvh, a, b, stack);
	}
	return { triangles: sorted(found), isComplete: true };
}

const sorted = (found: Set<number>): number[] => [...found].sort((a, b) => a - b);

function pushChildren({ counts, links }: Bvh, a: number, b: number, stack: number[]): void {
	if (a === b) stack.push(a + 1, a + 1, links[a]!, links[a]!, a + 1, links[a]!);
	else if (counts[a]! > 0) stack.push(a, b + 1, a, links[b]!);
	else if (counts[b]! > 0) stack.push(a + 1, b, links[a]!, b);
	else stack.push(a + 1, b + 1, a + 1, links[b]!, links[a]!, b + 1, links[a]!, links[b]!);
}

function boxesMeet({ boxes }: Bvh, a: number, b: number): boolean {
	const [i, j] = [6 * a, 6 * b];
	return (
		boxes[i]! <= boxes[j + 3]! &&
		boxes[j]! <= boxes[i + 3]! &&
		boxes[i + 1]! <= boxes[j + 4]! &&
		boxes[j + 1]! <= boxes[i + 4]! &&
		boxes[i + 2]! <= boxes[j + 5]! &&
		boxes[j + 2]! <= boxes[i + 5]!
	);
}

function forPairs(
	{ order, starts, counts, mesh }: Bvh,
	a: number,
	b: number,
	look: (s: number, t: number) => void
): number {
	let pairs = 0;
	for (let i = starts[a]!; i < starts[a]! + counts[a]!; i += 1) {
		const from = a === b ? i + 1 : starts[b]!;
		for (let j = from; j < starts[b]! + counts[b]!; j += 1) {
			pairs += 1;
			if (rangesMeet(mesh.positions, mesh.triangles, order[i]!, order[j]!))
				look(order[i]!, order[j]!);
		}
	}
	return pairs;
}

/** Sifts pairs by their own boxes before the exact test. */
function rangesMeet(p: Float64Array, triangles: Uint32Array, s: number, t: number): boolean {
	for (let axis = 0; axis < 3; axis += 1) {
		const a = p[3 * triangles[3 * s]! + axis]!;
		const b = p[3 * triangles[3 * s + 1]! + axis]!;
		const c = p[3 * triangles[3 * s + 2]! + axis]!;
		const d = p[3 * triangles[3 * t]! + axis]!;
		const e = p[3 * triangles[3 * t + 1]! + axis]!;
		const f = p[3 * triangles[3 * t + 2]! + axis]!;
		if (Math.min(a, b, c) > Math.max(d, e, f) || Math.min(d, e, f) > Math.max(a, b, c))
			return false;
	}
	return true;
}
