import type { Mesh } from './mesh';
import type { Soup } from './read-stl';

/** Joins corners that are the same numbers, bit for bit; −0 counts as 0. Triangles keep their order. */
export function weldSoup(soup: Soup): Mesh {
	return weldPoints(soup, Uint32Array.from({ length: 0 }), true);
}

/** Joins vertices of an indexed mesh that are the same numbers. */
export function weldMesh(mesh: Mesh): Mesh {
	return weldPoints(mesh.positions, mesh.triangles, false);
}

function weldPoints(points: Soup, triangles: Uint32Array, isSoup: boolean): Mesh {
	const count = points.length / 3;
	const size = tableSize(count);
	const mask = size - 1;
	const slots = new Int32Array(size).fill(-1);
	const kept = new Float64Array(points.length);
	const newIndex = new Uint32Array(count);
	const bits = new Uint32Array(6);
	const values = new Float64Array(bits.buffer);
	let keptCount = 0;
	for (let i = 0; i < count; i += 1) {
		const x = points[3 * i]! + 0;
		const y = points[3 * i + 1]! + 0;
		const z = points[3 * i + 2]! + 0;
		values[0] = x;
		values[1] = y;
		values[2] = z;
		let slot = hashOf(bits) & mask;
		let found = slots[slot]!;
		while (
			found >= 0 &&
			!(kept[3 * found] === x && kept[3 * found + 1] === y && kept[3 * found + 2] === z)
		) {
			slot = (slot + 1) & mask;
			found = slots[slot]!;
		}
		if (found < 0) {
			found = keptCount;
			slots[slot] = found;
			kept[3 * found] = x;
			kept[3 * found + 1] = y;
			kept[3 * found + 2] = z;
			keptCount += 1;
		}
		newIndex[i] = found;
	}
	return {
		positions: kept.slice(0, 3 * keptCount),
		triangles: isSoup ? newIndex : triangles.map((index) => newIndex[index]!)
	};
}

function tableSize(count: number): number {
	let size = 16;
	while (size < count * 1.5) size *= 2;
	return size;
}

function hashOf(bits: Uint32Array): number {
	let hash = 0;
	for (let k = 0; k < 6; k += 1) {
		hash = Math.imul(hash ^ bits[k]!, 0x9e3779b1);
		hash ^= hash >>> 15;
	}
	return hash;
}
