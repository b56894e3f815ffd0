import type { Mesh } from './mesh';
import { shellsOf } from './shells';
import { lyingTriangles } from './standing';
import { areaNormals } from './triangle-normals';

/** Vertices that a coat can meet, with the normals of the faces it meets there. */
export interface CoatedVertices {
	/** Unit normals by the coated faces alone; zeros where there are none. */
	normals: Float64Array;
	/** Third parts of the areas of the coated faces around each vertex, mm². */
	areasMm2: Float64Array;
	/** Whether each triangle is coated: not lying on the board, not in a closed hollow. */
	isCoated: Uint8Array;
}

export function coatedVertices(mesh: Mesh): CoatedVertices {
	const { positions, triangles } = mesh;
	const lying = lyingTriangles(mesh);
	const { shells, shellOf } = shellsOf(mesh);
	const normals = new Float64Array(positions.length);
	const areasMm2 = new Float64Array(positions.length / 3);
	const face = areaNormals(mesh);
	const isCoated = lying.map((value, t) => (value || shells[shellOf[t]!]!.isHollow ? 0 : 1));
	for (let k = 0; k < triangles.length; k += 1) {
		const t = Math.floor(k / 3);
		if (!isCoated[t]) continue;
		const angle = cornerAngle(positions, triangles, k);
		const size = Math.hypot(face[3 * t]!, face[3 * t + 1]!, face[3 * t + 2]!) || 1;
		const v = triangles[k]!;
		for (let axis = 0; axis < 3; axis += 1)
			normals[3 * v + axis]! += (angle * face[3 * t + axis]!) / size;
		areasMm2[v]! += size / 6;
	}
	for (let i = 0; i < normals.length; i += 3) {
		const length = Math.hypot(normals[i]!, normals[i + 1]!, normals[i + 2]!) || 1;
		for (let axis = 0; axis < 3; axis += 1) normals[i + axis]! /= length;
	}
	return { normals, areasMm2, isCoated };
}

function cornerAngle(positions: Float64Array, triangles: Uint32Array, k: number): number {
	const t = k - (k % 3);
	const p = 3 * triangles[k]!;
	const q = 3 * triangles[t + ((k + 1) % 3)]!;
	const r = 3 * triangles[t + ((k + 2) % 3)]!;
	let [along, own, other] = [0, 0, 0];
	for (let axis = 0; axis < 3; axis += 1) {
		const u = positions[q + axis]! - positions[p + axis]!;
		const v = positions[r + axis]! - positions[p + axis]!;
		along += u * v;
		own += u * u;
		other += v * v;
	}
	return own * other === 0
		? 0
		: Math.acos(Math.max(-1, Math.min(1, along / Math.sqrt(own * other))));
}
