import type { Mesh } from './mesh';
import { unitNormals } from './triangle-normals';

const HEADER_BYTES = 84;
const RECORD_BYTES = 50;

/** A mesh as a binary STL file: 84 bytes of header, then 50 bytes for each triangle. */
export function binaryStl(mesh: Mesh): Uint8Array<ArrayBuffer> {
	const { positions, triangles } = mesh;
	const count = triangles.length / 3;
	const bytes = new Uint8Array(HEADER_BYTES + RECORD_BYTES * count);
	const view = new DataView(bytes.buffer);
	view.setUint32(80, count, true);
	const normals = unitNormals(mesh);
	for (let t = 0; t < count; t += 1) {
		const at = HEADER_BYTES + RECORD_BYTES * t;
		for (let k = 0; k < 3; k += 1) view.setFloat32(at + 4 * k, normals[3 * t + k]!, true);
		for (let k = 0; k < 9; k += 1) {
			const value = positions[3 * triangles[3 * t + Math.floor(k / 3)]! + (k % 3)]!;
			view.setFloat32(at + 12 + 4 * k, value, true);
		}
	}
	return bytes;
}
