import type { Mesh } from './mesh';

/**
 * For each vertex the one that follows it in each of its triangles: those of v are links[starts[v]] up
 * to starts[v + 1]. In a closed mesh these are all its neighbors, each once.
 */
export interface VertexLinks {
	starts: Uint32Array;
	links: Uint32Array;
}

export function vertexLinks({ positions, triangles }: Mesh): VertexLinks {
	const count = positions.length / 3;
	const starts = new Uint32Array(count + 1);
	for (const v of triangles) starts[v + 1]! += 1;
	for (let v = 0; v < count; v += 1) starts[v + 1]! += starts[v]!;
	const filled = starts.slice();
	const links = new Uint32Array(triangles.length);
	for (let k = 0; k < triangles.length; k += 1) {
		const t = k - (k % 3);
		const v = triangles[k]!;
		links[filled[v]!] = triangles[t + ((k + 1) % 3)]!;
		filled[v]! += 1;
	}
	return { starts, links };
}
