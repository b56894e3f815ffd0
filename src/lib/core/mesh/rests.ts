import { convexHull } from './convex-hull';
import { edgesOf, headOf, tailOf } from './edges';
import { measuresOf } from './measures';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { areaNormals } from './triangle-normals';
import { UnionFind } from './union-find';
import { cross, dot, lengthOf, scaled, subtract, unitOf } from './vector';

/** A way the pattern can lie on the board. */
export interface Rest {
	/** Outward normal of the face that lies down, a unit vector. */
	down: Vec3;
	/** Area of the face of the convex hull that touches the board, in the mesh's unit squared. */
	area: number;
	/** How far the board can be tilted before the pattern tips over, degrees. */
	tipsAtDeg: number;
}

/** Hull facets that lean less than this count as one face: 0.05°. A choice. */
const FLAT_COS = Math.cos((0.05 * Math.PI) / 180);
const MOST_RESTS = 12;

/** Faces the pattern stays on when put down on them, the largest first; empty for a flat sheet. */
export function restsOf(mesh: Mesh): Rest[] {
	const hull = convexHull(mesh);
	if (!hull) return [];
	const body = measuresOf(mesh);
	const inHull = measuresOf(hull);
	// An open or turned mesh has no center of mass of its own.
	const isSolid = body.signedVolume > 1e-6 * inHull.signedVolume;
	const center = isSolid ? body.center : inHull.center;
	return facesOf(hull, center)
		.filter(({ tipsAtDeg }) => tipsAtDeg > 0)
		.sort((a, b) => b.area - a.area || b.tipsAtDeg - a.tipsAtDeg)
		.slice(0, MOST_RESTS);
}

function facesOf(hull: Mesh, center: Vec3): Rest[] {
	const edges = edgesOf(hull);
	const normals = areaNormals(hull);
	const facetCount = hull.triangles.length / 3;
	const normalOf = (facet: number): Vec3 => vertexAt({ ...hull, positions: normals }, facet);
	const joined = new UnionFind(facetCount);
	for (let edge = 0; edge < edges.count; edge += 1) {
		const [a, b] = [
			edges.halfEdges[edges.starts[edge]!]!,
			edges.halfEdges[edges.starts[edge]! + 1]!
		];
		const [f, g] = [Math.floor(a / 3), Math.floor(b / 3)];
		if (dot(unitOf(normalOf(f)), unitOf(normalOf(g))) > FLAT_COS) joined.join(f, g);
	}
	const { groupOf, count } = joined.groups();
	const sums = new Float64Array(3 * count);
	for (let k = 0; k < normals.length; k += 1) {
		sums[3 * groupOf[Math.floor(k / 3)]! + (k % 3)]! += normals[k]!;
	}
	const least = new Float64Array(count).fill(90);
	for (let half = 0; half < hull.triangles.length; half += 1) {
		const group = groupOf[Math.floor(half / 3)]!;
		const edge = edges.edgeOf[half]!;
		const pair = edges.halfEdges.subarray(edges.starts[edge], edges.starts[edge + 1]);
		if (pair.every((other) => groupOf[Math.floor(other / 3)] === group)) continue;
		const down = unitOf([sums[3 * group]!, sums[3 * group + 1]!, sums[3 * group + 2]!]);
		const tail = vertexAt(hull, tailOf(hull, half));
		const along = unitOf(subtract(vertexAt(hull, headOf(hull, half)), tail));
		const toCenter = subtract(center, tail);
		const inward = dot(cross(down, along), toCenter);
		const height = -dot(down, toCenter);
		least[group] = Math.min(least[group]!, (Math.atan2(inward, height) * 180) / Math.PI);
	}
	return Array.from({ length: count }, (_, group) => {
		const sum: Vec3 = [sums[3 * group]!, sums[3 * group + 1]!, sums[3 * group + 2]!];
		return { down: unitOf(sum), area: lengthOf(scaled(sum, 0.5)), tipsAtDeg: least[group]! };
	});
}
