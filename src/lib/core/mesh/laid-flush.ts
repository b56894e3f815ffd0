import { bvhOf } from './bvh';
import { forMeetingPairs } from './meeting-pairs';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import type { Nearness } from './nearness';
import { cross, dot, lengthOf, subtract, unitOf } from './vector';

/** More pairs than this belong to no pattern that somebody has put together of parts. A choice. */
const MOST_PAIRS = 10_000_000;

/**
 * The mesh with corners of one part that come as near to a face of another as to touch it laid into that face, the
 * smaller part to the larger one first.
 *
 * @param partOf - the part of each triangle
 * @param areaOf - the area of each part
 */
export function laidFlush(
	mesh: Mesh,
	partOf: ArrayLike<number>,
	areaOf: ArrayLike<number>,
	{ touch }: Nearness
): Mesh {
	const moved: Mesh = { positions: mesh.positions.slice(), triangles: mesh.triangles };
	const bvh = bvhOf(mesh);
	const pairs: [number, number][] = [];
	forMeetingPairs(bvh, { reach: touch, mostPairs: MOST_PAIRS }, (s, t) => {
		const [a, b] = [partOf[s]!, partOf[t]!];
		if (a !== b) pairs.push(areaOf[a]! < areaOf[b]! ? [s, t] : [t, s]);
		return true;
	});
	for (const [small, large] of pairs) layCorners(moved, small, large, touch);
	for (const [small, large] of pairs) layCorners(moved, large, small, touch);
	return moved;
}

function layCorners(mesh: Mesh, own: number, onto: number, touch: number): void {
	const [a, b, c] = [0, 1, 2].map((k) => vertexAt(mesh, mesh.triangles[3 * onto + k]!)) as [
		Vec3,
		Vec3,
		Vec3
	];
	const normal = unitOf(cross(subtract(b, a), subtract(c, a)));
	for (let k = 0; k < 3; k += 1) {
		const v = mesh.triangles[3 * own + k]!;
		const point = vertexAt(mesh, v);
		const height = dot(normal, subtract(point, a));
		if (height === 0 || Math.abs(height) > touch) continue;
		const isOver = [
			[a, b],
			[b, c],
			[c, a]
		].every(([from, to]) => {
			const along = subtract(to!, from!);
			const inward = dot(cross(normal, along), subtract(point, from!));
			return inward >= -touch * lengthOf(along);
		});
		if (!isOver) continue;
		for (let axis = 0; axis < 3; axis += 1)
			mesh.positions[3 * v + axis] = point[axis]! - height * normal[axis]!;
	}
}
