import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { cross, dot, lengthOf, subtract } from './vector';

/**
 * Whether two triangles pass through each other. Touching in a shared vertex or edge is no crossing;
 * neither are triangles in one plane.
 *
 * @param shallow - passing through by no more than this is touching too, in the mesh's unit
 *
 * Each side of each triangle is tested against the other triangle.
 * Source: Möller, Trumbore 1997, Fast, minimum storage ray-triangle intersection (from memory).
 */
export function trianglesCross(mesh: Mesh, s: number, t: number, shallow = 0): boolean {
	const a = [0, 1, 2].map((k) => mesh.triangles[3 * s + k]!);
	const b = [0, 1, 2].map((k) => mesh.triangles[3 * t + k]!);
	const shared = a.filter((index) => b.includes(index)).length;
	if (shared >= 2) return false;
	const p = a.map((index) => vertexAt(mesh, index)) as [Vec3, Vec3, Vec3];
	const q = b.map((index) => vertexAt(mesh, index)) as [Vec3, Vec3, Vec3];
	return sidesPierce(a, p, b, q, shallow) || sidesPierce(b, q, a, p, shallow);
}

function sidesPierce(
	ownIds: number[],
	own: [Vec3, Vec3, Vec3],
	otherIds: number[],
	other: [Vec3, Vec3, Vec3],
	shallow: number
): boolean {
	for (let k = 0; k < 3; k += 1) {
		const next = (k + 1) % 3;
		// A side that ends in a shared vertex only touches the other triangle there.
		if (otherIds.includes(ownIds[k]!) || otherIds.includes(ownIds[next]!)) continue;
		if (segmentPierces(own[k]!, own[next]!, other, shallow)) return true;
	}
	return false;
}

/** Strictly inside by a hair, so that parts that only touch are not taken for crossing. */
const HAIR = 1e-9;

function segmentPierces(
	from: Vec3,
	to: Vec3,
	[a, b, c]: [Vec3, Vec3, Vec3],
	shallow: number
): boolean {
	const along = subtract(to, from);
	const ab = subtract(b, a);
	const ac = subtract(c, a);
	const p = cross(along, ac);
	const det = dot(ab, p);
	const size = Math.sqrt(dot(ab, ab) * dot(ac, ac) * dot(along, along));
	if (Math.abs(det) <= HAIR * size) return false;
	const toFrom = subtract(from, a);
	const u = dot(toFrom, p) / det;
	if (!(u > HAIR && u < 1 - HAIR)) return false;
	const q = cross(toFrom, ab);
	const v = dot(along, q) / det;
	if (!(v > HAIR && u + v < 1 - HAIR)) return false;
	const w = dot(ac, q) / det;
	if (!(w > HAIR && w < 1 - HAIR)) return false;
	// By how much the shorter end stands out, at right angles to the triangle.
	const out = (Math.min(w, 1 - w) * Math.abs(det)) / lengthOf(cross(ab, ac));
	return out > shallow;
}
