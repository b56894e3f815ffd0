import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { cross, dot, subtract } from './vector';

/**
 * Whether two triangles pass through each other. Touching in a shared vertex or edge is no crossing;
 * neither are triangles in one plane.
 *
 * Each side of each triangle is tested against the other triangle.
 * Source: Möller, Trumbore 1997, Fast, minimum storage ray-triangle intersection (from memory).
 */
export function trianglesCross(mesh: Mesh, s: number, t: number): boolean {
	const a = [0, 1, 2].map((k) => mesh.triangles[3 * s + k]!);
	const b = [0, 1, 2].map((k) => mesh.triangles[3 * t + k]!);
	const shared = a.filter((index) => b.includes(index)).length;
	if (shared >= 2) return false;
	const p = a.map((index) => vertexAt(mesh, index)) as [Vec3, Vec3, Vec3];
	const q = b.map((index) => vertexAt(mesh, index)) as [Vec3, Vec3, Vec3];
	return sidesPierce(a, p, b, q) || sidesPierce(b, q, a, p);
}

function sidesPierce(
	ownIds: number[],
	own: [Vec3, Vec3, Vec3],
	otherIds: number[],
	other: [Vec3, Vec3, Vec3]
): boolean {
	for (let k = 0; k < 3; k += 1) {
		const next = (k + 1) % 3;
		// A side that ends in a shared vertex only touches the other triangle there.
		if (otherIds.includes(ownIds[k]!) || otherIds.includes(ownIds[next]!)) continue;
		if (segmentPierces(own[k]!, own[next]!, other)) return true;
	}
	return false;
}

/** Strictly inside by a hair, so that parts that only touch are not taken for crossing. */
const HAIR = 1e-9;

function segmentPierces(from: Vec3, to: Vec3, [a, b, c]: [Vec3, Vec3, Vec3]): boolean {
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
	return w > HAIR && w < 1 - HAIR;
}
