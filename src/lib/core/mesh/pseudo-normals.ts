import { edgesOf } from './edges';
import type { Mesh } from './mesh';
import { unitNormals } from './triangle-normals';

/** Normals of faces, edges and vertices that tell inside from outside for any point near them. */
export interface PseudoNormals {
	/** Unit normal of each triangle. */
	face: Float64Array;
	/** For each half-edge the sum of the unit normals on both sides. */
	edge: Float64Array;
	/** For each vertex the unit normal weighted by the angles of the faces around it. */
	vertex: Float64Array;
}

/**
 * Source: Bærentzen, Aanæs 2005, Signed distance computation using the angle weighted pseudonormal,
 * IEEE TVCG 11(3) (from memory). Right for closed meshes that do not cross themselves.
 */
export function pseudoNormalsOf(mesh: Mesh): PseudoNormals {
	const face = unitNormals(mesh);
	return { face, edge: edgeNormals(mesh, face), vertex: vertexNormals(mesh, face) };
}

function edgeNormals(mesh: Mesh, face: Float64Array): Float64Array {
	const { count, starts, halfEdges } = edgesOf(mesh);
	const normals = new Float64Array(3 * mesh.triangles.length);
	for (let edge = 0; edge < count; edge += 1) {
		const [from, to] = [starts[edge]!, starts[edge + 1]!];
		let [x, y, z] = [0, 0, 0];
		for (let k = from; k < to; k += 1) {
			const t = 3 * Math.floor(halfEdges[k]! / 3);
			x += face[t]!;
			y += face[t + 1]!;
			z += face[t + 2]!;
		}
		for (let k = from; k < to; k += 1) {
			const half = 3 * halfEdges[k]!;
			normals[half] = x;
			normals[half + 1] = y;
			normals[half + 2] = z;
		}
	}
	return normals;
}

function vertexNormals({ positions, triangles }: Mesh, face: Float64Array): Float64Array {
	const normals = new Float64Array(positions.length);
	for (let k = 0; k < triangles.length; k += 1) {
		const t = k - (k % 3);
		const p = 3 * triangles[k]!;
		const q = 3 * triangles[t + ((k + 1) % 3)]!;
		const r = 3 * triangles[t + ((k + 2) % 3)]!;
		const [ux, uy, uz] = [
			positions[q]! - positions[p]!,
			positions[q + 1]! - positions[p + 1]!,
			positions[q + 2]! - positions[p + 2]!
		];
		const [vx, vy, vz] = [
			positions[r]! - positions[p]!,
			positions[r + 1]! - positions[p + 1]!,
			positions[r + 2]! - positions[p + 2]!
		];
		const lengths = Math.sqrt((ux * ux + uy * uy + uz * uz) * (vx * vx + vy * vy + vz * vz));
		if (lengths === 0) continue;
		const angle = Math.acos(Math.max(-1, Math.min(1, (ux * vx + uy * vy + uz * vz) / lengths)));
		normals[p]! += angle * face[t]!;
		normals[p + 1]! += angle * face[t + 1]!;
		normals[p + 2]! += angle * face[t + 2]!;
	}
	for (let i = 0; i < normals.length; i += 3) {
		const length = Math.hypot(normals[i]!, normals[i + 1]!, normals[i + 2]!) || 1;
		normals[i]! /= length;
		normals[i + 1]! /= length;
		normals[i + 2]! /= length;
	}
	return normals;
}
