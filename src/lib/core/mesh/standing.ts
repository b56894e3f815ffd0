import type { Mesh } from './mesh';
import { areaNormals } from './triangle-normals';

/** How far above the board a face still counts as lying on it: a sheet of paper. A choice. */
export const LYING_MM = 0.1;

/**
 * For each triangle of a placed mesh whether it lies on the board: all corners within 0.1 mm of it,
 * facing down.
 */
export function lyingTriangles(mesh: Mesh): Uint8Array {
	const { positions, triangles } = mesh;
	const normals = areaNormals(mesh);
	const lying = new Uint8Array(triangles.length / 3);
	for (let t = 0; t < lying.length; t += 1) {
		const isLow = [0, 1, 2].every((k) => positions[3 * triangles[3 * t + k]! + 2]! <= LYING_MM);
		const [x, y, z] = [normals[3 * t]!, normals[3 * t + 1]!, normals[3 * t + 2]!];
		lying[t] = isLow && z <= 0 && z * z > 0.9 * (x * x + y * y + z * z) ? 1 : 0;
	}
	return lying;
}
