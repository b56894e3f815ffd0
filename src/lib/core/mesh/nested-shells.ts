import { vertexAt, type Mesh, type Vec3 } from './mesh';
import type { MeshShells } from './shells';
import { cross, dot, lengthOf, subtract } from './vector';

/** Triangles looked at for all parts together: with very many loose parts only the largest are looked at. A choice. */
const MOST_LOOKS = 20_000_000;

export interface NestedShells {
	/** For each part 1 when it is solid within the solid of others: what it encloses counts twice in the volume. */
	isNested: Uint8Array;
	/** How many of the smallest parts were not looked at. */
	unlooked: number;
}

/** Parts that lie within others; one within a hollow is none. */
export function nestedShells(mesh: Mesh, { shells, shellOf }: MeshShells): NestedShells {
	const isNested = new Uint8Array(shells.length);
	if (shells.length < 2) return { isNested, unlooked: 0 };
	const largest = largestTriangles(mesh, shellOf, shells.length);
	const solid = Array.from(shells.keys()).filter((i) => shells[i]!.signedVolume > 0);
	const looked = solid
		.sort((a, b) => shells[b]!.area - shells[a]!.area)
		.slice(0, Math.floor(MOST_LOOKS / shellOf.length));
	for (const i of looked) {
		const at = justInside(mesh, largest[i]!);
		if (turnsAround(mesh, at, (t) => shellOf[t] !== i) > 0.5) isNested[i] = 1;
	}
	return { isNested, unlooked: solid.length - looked.length };
}

const cornersOf = (mesh: Mesh, triangle: number) =>
	[0, 1, 2].map((k) => vertexAt(mesh, mesh.triangles[3 * triangle + k]!)) as [Vec3, Vec3, Vec3];

/** Twice the area along the outward normal. */
const normalOf = ([a, b, c]: [Vec3, Vec3, Vec3]) => cross(subtract(b, a), subtract(c, a));

function largestTriangles(mesh: Mesh, shellOf: ArrayLike<number>, count: number): Int32Array {
	const largest = new Int32Array(count);
	const areas = new Float64Array(count);
	for (let t = 0; t < mesh.triangles.length / 3; t += 1) {
		const shell = shellOf[t]!;
		const area = lengthOf(normalOf(cornersOf(mesh, t)));
		if (area <= areas[shell]!) continue;
		areas[shell] = area;
		largest[shell] = t;
	}
	return largest;
}

/** Shares of the corners: no middle, since a model drawn on a grid has other parts' faces there. */
const SHARES = [0.37, 0.341, 0.289] as const;
/** How deep, as a part of the triangle's size. Numerical choice. */
const DEPTH = 1.234e-4;

/**
 * A point of the part's own solid, close under a triangle: parts may stand on one board or on each other, and a point
 * of their surface is then neither in nor out.
 */
function justInside(mesh: Mesh, triangle: number): Vec3 {
	const corners = cornersOf(mesh, triangle);
	const normal = normalOf(corners);
	const long = lengthOf(normal);
	const inward = long === 0 ? 0 : DEPTH / Math.sqrt(long);
	return [0, 1, 2].map(
		(axis) =>
			corners.reduce((sum, corner, k) => sum + SHARES[k]! * corner[axis]!, 0) -
			inward * normal[axis]!
	) as unknown as Vec3;
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
		const [a, b, c] = cornersOf(mesh, t).map((corner) => subtract(corner, at)) as [
			Vec3,
			Vec3,
			Vec3
		];
		const [x, y, z] = [lengthOf(a), lengthOf(b), lengthOf(c)];
		const volume = dot(a, cross(b, c));
		sum += Math.atan2(volume, x * y * z + dot(a, b) * z + dot(b, c) * x + dot(c, a) * y);
	}
	return sum / (2 * Math.PI);
}
