import { vertexAt, type Mesh, type Vec3 } from './mesh';
import type { Polygon } from './stitched';
import { scaled } from './vector';

/** A mesh of triangles over convex polygons, without corners that none of them has. */
export function meshOfPolygons(positions: Float64Array, polygons: readonly Polygon[]): Mesh {
	const newIndex = new Map<number, number>();
	const corners: number[] = [];
	const add = (at: Vec3): number => {
		corners.push(...at);
		return corners.length / 3 - 1;
	};
	const triangles: number[] = [];
	for (const polygon of polygons) {
		const own = polygon.map((v) => {
			const index = newIndex.get(v) ?? add(vertexAt({ positions }, v));
			newIndex.set(v, index);
			return index;
		});
		if (own.length === 3) triangles.push(...own);
		else {
			// From its middle: a fan from a corner would lie flat along a side that has corners on it.
			const middle = add(middleOf(positions, polygon));
			own.forEach((v, i) => triangles.push(v, own[(i + 1) % own.length]!, middle));
		}
	}
	return { positions: Float64Array.from(corners), triangles: Uint32Array.from(triangles) };
}

function middleOf(positions: Float64Array, polygon: Polygon): Vec3 {
	return scaled(
		polygon
			.map((v) => vertexAt({ positions }, v))
			.reduce((sum, at): Vec3 => [sum[0] + at[0], sum[1] + at[1], sum[2] + at[2]]),
		1 / polygon.length
	);
}
