import {
	AREA,
	CORNER,
	hasVolume,
	MAX,
	measuresFrom,
	MIN,
	MOMENT,
	noSums,
	VOLUME,
	type Measures
} from './measures';
import type { Vec3 } from './mesh';

const HEADER_BYTES = 84;
const RECORD_BYTES = 50;
const CORNERS_AT = 12;
/** Bytes gone over twice in a row, while they are still in the processor's first cache. */
const BLOCK_BYTES = 256 * RECORD_BYTES;

/**
 * Measures of a binary STL straight from its bytes, for a first answer while the mesh is still being joined.
 *
 * @param bytes - a file whose length is 84 + 50 × triangles
 * @returns null when the bytes are no such file
 */
export function binaryStlMeasures(bytes: Uint8Array): Measures | null {
	if (bytes.length < HEADER_BYTES + RECORD_BYTES) return null;
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
	const count = view.getUint32(80, true);
	if (HEADER_BYTES + RECORD_BYTES * count !== bytes.length) return null;
	const first = HEADER_BYTES + CORNERS_AT;
	const float = (at: number): number => view.getFloat32(first + at, true);
	const origin: Vec3 = [float(0), float(4), float(8)];
	const sums = noSums();
	for (let from = first; from < bytes.length; from += BLOCK_BYTES) {
		const to = Math.min(bytes.length, from + BLOCK_BYTES);
		addSums(view, from, to, origin, sums);
		widenBox(view, from, to, sums);
	}
	if (!hasVolume(sums)) addCorners(view, first, bytes.length, origin, sums);
	return measuresFrom(sums, origin, 3 * count);
}

/** Box and sums apart: together they need more numbers at hand than a processor has places for. */
function addSums(view: DataView, from: number, to: number, origin: Vec3, sums: Float64Array): void {
	const [x0, y0, z0] = origin;
	let [area, volume, mx, my, mz] = [0, 0, 0, 0, 0];
	for (let at = from; at < to; at += RECORD_BYTES) {
		const ax = view.getFloat32(at, true) - x0;
		const ay = view.getFloat32(at + 4, true) - y0;
		const az = view.getFloat32(at + 8, true) - z0;
		const bx = view.getFloat32(at + 12, true) - x0;
		const by = view.getFloat32(at + 16, true) - y0;
		const bz = view.getFloat32(at + 20, true) - z0;
		const cx = view.getFloat32(at + 24, true) - x0;
		const cy = view.getFloat32(at + 28, true) - y0;
		const cz = view.getFloat32(at + 32, true) - z0;
		const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
		const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
		const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
		area += Math.sqrt(nx * nx + ny * ny + nz * nz);
		const six = ax * nx + ay * ny + az * nz;
		volume += six;
		mx += six * (ax + bx + cx);
		my += six * (ay + by + cy);
		mz += six * (az + bz + cz);
	}
	sums[AREA]! += area;
	sums[VOLUME]! += volume;
	sums[MOMENT]! += mx;
	sums[MOMENT + 1]! += my;
	sums[MOMENT + 2]! += mz;
}

function widenBox(view: DataView, from: number, to: number, sums: Float64Array): void {
	let minX = sums[MIN]!;
	let minY = sums[MIN + 1]!;
	let minZ = sums[MIN + 2]!;
	let maxX = sums[MAX]!;
	let maxY = sums[MAX + 1]!;
	let maxZ = sums[MAX + 2]!;
	for (let at = from; at < to; at += RECORD_BYTES) {
		const ax = view.getFloat32(at, true);
		const ay = view.getFloat32(at + 4, true);
		const az = view.getFloat32(at + 8, true);
		const bx = view.getFloat32(at + 12, true);
		const by = view.getFloat32(at + 16, true);
		const bz = view.getFloat32(at + 20, true);
		const cx = view.getFloat32(at + 24, true);
		const cy = view.getFloat32(at + 28, true);
		const cz = view.getFloat32(at + 32, true);
		if (ax < minX) minX = ax;
		if (ax > maxX) maxX = ax;
		if (bx < minX) minX = bx;
		if (bx > maxX) maxX = bx;
		if (cx < minX) minX = cx;
		if (cx > maxX) maxX = cx;
		if (ay < minY) minY = ay;
		if (ay > maxY) maxY = ay;
		if (by < minY) minY = by;
		if (by > maxY) maxY = by;
		if (cy < minY) minY = cy;
		if (cy > maxY) maxY = cy;
		if (az < minZ) minZ = az;
		if (az > maxZ) maxZ = az;
		if (bz < minZ) minZ = bz;
		if (bz > maxZ) maxZ = bz;
		if (cz < minZ) minZ = cz;
		if (cz > maxZ) maxZ = cz;
	}
	sums.set([minX, minY, minZ, maxX, maxY, maxZ], MIN);
}

function addCorners(view: DataView, from: number, to: number, origin: Vec3, sums: Float64Array) {
	for (let at = from; at < to; at += RECORD_BYTES) {
		for (let k = 0; k < 9; k += 1) {
			sums[CORNER + (k % 3)]! += view.getFloat32(at + 4 * k, true) - origin[k % 3]!;
		}
	}
}
