import type { Mesh } from './mesh';

/** For each triangle its outward normal times twice its area. */
export function areaNormals({ positions, triangles }: Mesh): Float64Array {
	const normals = new Float64Array(triangles.length);
	for (let t = 0; t < triangles.length; t += 3) {
		const a = 3 * triangles[t]!;
		const b = 3 * triangles[t + 1]!;
		const c = 3 * triangles[t + 2]!;
		const ux = positions[b]! - positions[a]!;
		const uy = positions[b + 1]! - positions[a + 1]!;
		const uz = positions[b + 2]! - positions[a + 2]!;
		const vx = positions[c]! - positions[a]!;
		const vy = positions[c + 1]! - positions[a + 1]!;
		const vz = positions[c + 2]! - positions[a + 2]!;
		normals[t] = uy * vz - uz * vy;
		normals[t + 1] = uz * vx - ux * vz;
		normals[t + 2] = ux * vy - uy * vx;
	}
	return normals;
}

/** For each triangle its outward normal at length one; zeros where it has no area. */
export function unitNormals(mesh: Mesh): Float64Array {
	const normals = areaNormals(mesh);
	for (let t = 0; t < normals.length; t += 3) {
		const length = Math.hypot(normals[t]!, normals[t + 1]!, normals[t + 2]!) || 1;
		normals[t]! /= length;
		normals[t + 1]! /= length;
		normals[t + 2]! /= length;
	}
	return normals;
}
