import { CHUNK, MeasureSums, type Measures } from './measures';

const HEADER_BYTES = 84;
const RECORD_BYTES = 50;
const CORNERS_AT = 12;

/**
 * Measures of a binary STL straight from its bytes, for a first answer while the mesh is still being joined.
 *
 * @param bytes - a file whose length is 84 + 50 × triangles
 * @returns null when the bytes are no such file
 */
export function binaryStlMeasures(bytes: Uint8Array): Measures | null {
	if (bytes.length < HEADER_BYTES + RECORD_BYTES) return null;
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
	const end = HEADER_BYTES + RECORD_BYTES * view.getUint32(80, true);
	if (end !== bytes.length) return null;
	const float = (at: number): number => view.getFloat32(at, true);
	const first = HEADER_BYTES + CORNERS_AT;
	const sums = new MeasureSums(float(first), float(first + 4), float(first + 8));
	const corners = new Float64Array(9 * CHUNK);
	let filled = 0;
	for (let at = first; at < end; at += RECORD_BYTES) {
		const n = 9 * filled;
		corners[n] = view.getFloat32(at, true);
		corners[n + 1] = view.getFloat32(at + 4, true);
		corners[n + 2] = view.getFloat32(at + 8, true);
		corners[n + 3] = view.getFloat32(at + 12, true);
		corners[n + 4] = view.getFloat32(at + 16, true);
		corners[n + 5] = view.getFloat32(at + 20, true);
		corners[n + 6] = view.getFloat32(at + 24, true);
		corners[n + 7] = view.getFloat32(at + 28, true);
		corners[n + 8] = view.getFloat32(at + 32, true);
		filled += 1;
		if (filled === CHUNK) {
			sums.add(corners, filled);
			filled = 0;
		}
	}
	sums.add(corners, filled);
	return sums.measures();
}
