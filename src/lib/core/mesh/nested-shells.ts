import { vertexAt, type Mesh, type Vec3 } from './mesh';
import type { MeshShells } from './shells';
import { cross, dot, lengthOf, subtract } from './vector';

/** Triangles looked at for all parts together: with very many loose parts only the largest are looked at. A choice. */
const MOST_LOOKS = 20_000_000;

/**
 * For each part whether it is solid within the solid of others: 1 when so. What it encloses counts twice in the
 * volume. A part within a hollow is none.
 */
export function nestedShells(mesh: Mesh, { shells, shellOf }: MeshShells): Uint8Array {
	const isNested = new Uint8Array(shells.length);
	if (shells.length < 2) return isNested;
	const firsts = new Map<number, number>();
	shellOf.forEach((shell, t) => firsts.has(shell) || firsts.set(shell, t));
	const looked = Array.from(shells.keys())
		.filter((i) => shells[i]!.signedVolume > 0)
		.sort((a, b) => shells[b]!.area - shells[a]!.area)
		.slice(0, Math.floor(MOST_LOOKS / shellOf.length));
	for (const i of looked) {
		const at = vertexAt(mesh, mesh.triangles[3 * firsts.get(i)!]!);
		if (turnsAround(mesh, at, (t) => shellOf[t] !== i) > 0.5) isNested[i] = 1;
	}
	return isNested;
}

/**
 * How often the triangles that count enclose a point: 1 inside, 0 outside.
 *
 * Source: van Oosterom, Strackee 1983, The solid angle of a plane triangle, IEEE Trans. Biomed. Eng. 30, 125 (from memory).
 */
function turnsAround(mesh: Mesh, at: Vec3, counts: (triangle: number) => boolean): number {
	let sum = 0;
	for (let t = 0; t < mesh.triangles.length / 3; t += 1) {
		if (!counts(t)) continue;
		const [a, b, c] = [0, 1, 2].map((k) =>
			subtract(vertexAt(mesh, mesh.triangles[3 * t + k]!), at)
		) as unknown as [Vec3, Vec3, Vec3];
		const [x, y, z] = [lengthOf(a), lengthOf(b), lengthOf(c)];
		const volume = dot(a, cross(b, c));
		sum += Math.atan2(volume, x * y * z + dot(a, b) * z + dot(b, c) * x + dot(c, a) * y);
	}
	return sum / (2 * Math.PI);
}
