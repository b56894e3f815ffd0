import { edgesOf, headOf, tailOf } from './edges';
import type { Mesh } from './mesh';

export interface Refined {
	mesh: Mesh;
	/** The triangle of the coarse mesh that each fine one is part of. */
	parentOf: Uint32Array;
}

/**
 * The same surface in triangles whose sides are no longer than `longestMm`, for maps over it. Edges are
 * halved for both neighbors at once, so that a closed mesh stays closed; it stops before `maxTriangles`.
 */
export function refinedMesh(mesh: Mesh, longestMm: number, maxTriangles = 1_000_000): Refined {
	let now: Refined = {
		mesh,
		parentOf: Uint32Array.from({ length: mesh.triangles.length / 3 }, (_, t) => t)
	};
	// Halving 40 times takes a kilometer below a nanometer: more rounds would mean a fault.
	for (let round = 0; round < 40; round += 1) {
		const next = halved(now, longestMm, maxTriangles);
		if (next === null) return now;
		now = next;
	}
	return now;
}

function halved(
	{ mesh, parentOf }: Refined,
	longest: number,
	maxTriangles: number
): Refined | null {
	const edges = edgesOf(mesh);
	const middles = new Int32Array(edges.count).fill(-1);
	const added: number[] = [];
	const { positions, triangles } = mesh;
	const first = positions.length / 3;
	let splits = 0;
	for (let edge = 0; edge < edges.count; edge += 1) {
		const half = edges.halfEdges[edges.starts[edge]!]!;
		const [a, b] = [3 * tailOf(mesh, half), 3 * headOf(mesh, half)];
		const lengthSquared =
			(positions[a]! - positions[b]!) ** 2 +
			(positions[a + 1]! - positions[b + 1]!) ** 2 +
			(positions[a + 2]! - positions[b + 2]!) ** 2;
		if (lengthSquared <= longest * longest) continue;
		middles[edge] = first + added.length / 3;
		for (let axis = 0; axis < 3; axis += 1)
			added.push((positions[a + axis]! + positions[b + axis]!) / 2);
		splits += edges.starts[edge + 1]! - edges.starts[edge]!;
	}
	if (added.length === 0 || triangles.length / 3 + splits > maxTriangles) return null;
	const finer = new Float64Array(positions.length + added.length);
	finer.set(positions);
	finer.set(added, positions.length);
	const pieces = new Uint32Array(triangles.length + 3 * splits);
	const parents = new Uint32Array(pieces.length / 3);
	let count = 0;
	for (let t = 0; t < triangles.length / 3; t += 1) {
		const corners = triangles.subarray(3 * t, 3 * t + 3);
		const cuts = [0, 1, 2].map((k) => middles[edges.edgeOf[3 * t + k]!]!);
		for (const piece of cutTriangle(corners, cuts)) {
			pieces.set(piece, 3 * count);
			parents[count] = parentOf[t]!;
			count += 1;
		}
	}
	return { mesh: { positions: finer, triangles: pieces }, parentOf: parents };
}

/**
 * A triangle cut at the middles of those of its sides that have one.
 *
 * @param corners - three of them, counterclockwise
 * @param middles - of the sides that begin at each corner; −1 for none
 */
export function cutTriangle(corners: ArrayLike<number>, middles: ArrayLike<number>): number[][] {
	const corner = (k: number): number => corners[k % 3]!;
	const middle = (k: number): number => middles[k % 3]!;
	const split = [0, 1, 2].filter((k) => middle(k) >= 0);
	if (split.length === 0) return [[corner(0), corner(1), corner(2)]];
	if (split.length === 1) {
		const k = split[0]!;
		return [
			[corner(k), middle(k), corner(k + 2)],
			[middle(k), corner(k + 1), corner(k + 2)]
		];
	}
	if (split.length === 2) {
		// k is the side that stays whole; the corner across from it is cut off.
		const k = [0, 1, 2].find((side) => middle(side) < 0)!;
		return [
			[middle(k + 1), corner(k + 2), middle(k + 2)],
			[corner(k), corner(k + 1), middle(k + 1)],
			[corner(k), middle(k + 1), middle(k + 2)]
		];
	}
	return [
		[corner(0), middle(0), middle(2)],
		[middle(0), corner(1), middle(1)],
		[middle(2), middle(1), corner(2)],
		[middle(0), middle(1), middle(2)]
	];
}
