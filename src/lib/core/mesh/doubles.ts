import { edgesOf } from './edges';
import type { Mesh } from './mesh';
import { UnionFind } from './union-find';

/** Triangles over the same three vertices as one before them, each with that one. */
export function doublesOf({ triangles }: Mesh): Map<number, number> {
	const count = triangles.length / 3;
	// Chains through one array, by hash: a list for each triangle would take a gigabyte for millions.
	const heads = new Int32Array(2 ** Math.ceil(Math.log2(count + 2))).fill(-1);
	const next = new Int32Array(count);
	const doubled = new Map<number, number>();
	for (let t = 0; t < count; t += 1) {
		const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
		const low = Math.min(a, b, c);
		const high = Math.max(a, b, c);
		const middle = a + b + c - low - high;
		const hash = Math.imul(low, 73856093) ^ Math.imul(middle, 19349663) ^ Math.imul(high, 83492791);
		const slot = (hash ^ (hash >>> 15)) & (heads.length - 1);
		let other = heads[slot]!;
		while (other >= 0 && !isSame(triangles, other, low, middle, high)) other = next[other]!;
		if (other >= 0) doubled.set(t, other);
		else {
			next[t] = heads[slot]!;
			heads[slot] = t;
		}
	}
	return doubled;
}

function isSame(
	triangles: Uint32Array,
	other: number,
	low: number,
	middle: number,
	high: number
): boolean {
	for (let k = 3 * other; k < 3 * other + 3; k += 1) {
		const index = triangles[k]!;
		if (index !== low && index !== middle && index !== high) return false;
	}
	return true;
}

export interface UselessDoubles {
	/** Triangles that say once more what another one says. */
	dropped: Set<number>;
	/** Triangles on both sides of nothing, where closed parts stand face to face with the same corners. */
	walls: Set<number>;
}

/**
 * Which of doubled triangles a mesh is better without. Where two closed parts share a face that looks one way for both, each
 * needs its own; a sheet whose every triangle comes once for each side has no part that it divides, and keeps one.
 *
 * @param doubles - from `doublesOf`
 */
export function uselessDoubles(mesh: Mesh, doubles: ReadonlyMap<number, number>): UselessDoubles {
	const opposite = new Map(
		[...doubles].filter(([t, first]) => !runsAlike(mesh.triangles, t, first))
	);
	const alike = new Map([...doubles].filter(([t]) => !opposite.has(t)));
	const walls = betweenParts(mesh, opposite);
	const needed = betweenParts(mesh, alike);
	return {
		walls,
		dropped: new Set([...doubles.keys()].filter((t) => !walls.has(t) && !needed.has(t)))
	};
}

/** Both of the pairs that lie where parts meet: around each edge of their patch there is an even number of others. */
function betweenParts(mesh: Mesh, doubles: ReadonlyMap<number, number>): Set<number> {
	const paired = new Set([...doubles].flat());
	if (paired.size === 0) return paired;
	const { count, starts, halfEdges } = edgesOf(mesh);
	const joined = new UnionFind(mesh.triangles.length / 3);
	const rims: { triangle: number; others: number }[] = [];
	for (let edge = 0; edge < count; edge += 1) {
		const around = [...halfEdges.subarray(starts[edge]!, starts[edge + 1]!)].map((half) =>
			Math.floor(half / 3)
		);
		const [first, ...more] = around.filter((t) => paired.has(t));
		if (first === undefined) continue;
		for (const t of more) joined.join(first, t);
		const others = around.length - more.length - 1;
		if (others > 0) rims.push({ triangle: first, others });
	}
	const between = new Set(rims.map(({ triangle }) => joined.rootOf(triangle)));
	// With an odd number of others the two are one of theirs, given twice.
	for (const { triangle, others } of rims)
		if (others % 2 === 1) between.delete(joined.rootOf(triangle));
	return new Set([...paired].filter((t) => between.has(joined.rootOf(t))));
}

function runsAlike(triangles: Uint32Array, s: number, t: number): boolean {
	const k = [0, 1, 2].find((corner) => triangles[3 * t + corner] === triangles[3 * s])!;
	return triangles[3 * t + ((k + 1) % 3)] === triangles[3 * s + 1];
}
