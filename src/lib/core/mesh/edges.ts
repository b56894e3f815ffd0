import type { Mesh } from './mesh';

/**
 * The edges of a mesh, each once. Half-edge `h` is the side of triangle ⌊h / 3⌋ that leaves its
 * corner h mod 3.
 */
export interface Edges {
	count: number;
	/** Half-edges in order of their edge; those of edge e are at starts[e] up to starts[e + 1]. */
	halfEdges: Uint32Array;
	starts: Uint32Array;
	/** The edge of each half-edge. */
	edgeOf: Uint32Array;
}

/** The vertex a half-edge leaves. */
export function tailOf({ triangles }: Mesh, half: number): number {
	return triangles[half]!;
}

/** The vertex a half-edge leads to. */
export function headOf({ triangles }: Mesh, half: number): number {
	return triangles[half % 3 === 2 ? half - 2 : half + 1]!;
}

/** Finds the edges by hashing their two ends, so that a vertex of a million edges costs no more. */
export function edgesOf(mesh: Mesh): Edges {
	const halfCount = mesh.triangles.length;
	const edgeOf = new Uint32Array(halfCount);
	const lower = new Uint32Array(halfCount);
	const upper = new Uint32Array(halfCount);
	const slots = new Int32Array(2 ** Math.ceil(Math.log2(halfCount + 2))).fill(-1);
	const sizes = new Uint32Array(halfCount + 1);
	let count = 0;
	for (let half = 0; half < halfCount; half += 1) {
		const a = tailOf(mesh, half);
		const b = headOf(mesh, half);
		const low = Math.min(a, b);
		const high = Math.max(a, b);
		let slot = hashOf(low, high) & (slots.length - 1);
		let edge = slots[slot]!;
		while (edge >= 0 && !(lower[edge] === low && upper[edge] === high)) {
			slot = (slot + 1) & (slots.length - 1);
			edge = slots[slot]!;
		}
		if (edge < 0) {
			edge = count;
			count += 1;
			lower[edge] = low;
			upper[edge] = high;
			slots[slot] = edge;
		}
		edgeOf[half] = edge;
		sizes[edge]! += 1;
	}
	const starts = new Uint32Array(count + 1);
	for (let edge = 0; edge < count; edge += 1) starts[edge + 1] = starts[edge]! + sizes[edge]!;
	const filled = starts.slice();
	const halfEdges = new Uint32Array(halfCount);
	for (let half = 0; half < halfCount; half += 1) {
		const edge = edgeOf[half]!;
		halfEdges[filled[edge]!] = half;
		filled[edge]! += 1;
	}
	return { count, halfEdges, starts, edgeOf };
}

function hashOf(low: number, high: number): number {
	const hash = Math.imul(low ^ Math.imul(high, 0x85ebca6b), 0x9e3779b1);
	return hash ^ (hash >>> 15);
}
