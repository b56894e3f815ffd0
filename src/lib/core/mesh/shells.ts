import type { Edges } from './edges';
import { edgesOf } from './edges';
import type { Mesh } from './mesh';
import { UnionFind } from './union-find';

/** A part of a mesh that hangs together over its edges. */
export interface MeshShell {
	triangleCount: number;
	/** In the mesh's unit cubed; negative when its triangles face inward. */
	signedVolume: number;
	area: number;
	/** A part that faces inward within a larger one that faces outward: an enclosed hollow. */
	isHollow: boolean;
}

export interface MeshShells {
	shells: MeshShell[];
	/** The shell of each triangle. */
	shellOf: Int32Array;
}

/** Parts of a mesh, in order of their first triangle. */
export function shellsOf(mesh: Mesh, edges: Edges = edgesOf(mesh)): MeshShells {
	const joined = new UnionFind(mesh.triangles.length / 3);
	for (let edge = 0; edge < edges.count; edge += 1) {
		const first = edges.starts[edge]!;
		for (let k = first + 1; k < edges.starts[edge + 1]!; k += 1) {
			joined.join(Math.floor(edges.halfEdges[first]! / 3), Math.floor(edges.halfEdges[k]! / 3));
		}
	}
	const { groupOf: shellOf, count } = joined.groups();
	const sums = new Float64Array(count * 9);
	for (let shell = 0; shell < count; shell += 1) sums.fill(Infinity, 9 * shell + 3, 9 * shell + 6);
	for (let shell = 0; shell < count; shell += 1) sums.fill(-Infinity, 9 * shell + 6, 9 * shell + 9);
	for (let t = 0; t < shellOf.length; t += 1)
		addTriangle(mesh, t, sums.subarray(9 * shellOf[t]!, 9 * shellOf[t]! + 9));
	const shells = Array.from({ length: count }, (_, i) => ({
		triangleCount: sums[9 * i]!,
		signedVolume: sums[9 * i + 1]!,
		area: sums[9 * i + 2]!,
		isHollow: false
	}));
	markHollows(shells, sums);
	return { shells, shellOf };
}

/** Adds to count, volume and area, and widens the box that follows them. */
function addTriangle({ positions, triangles }: Mesh, t: number, sum: Float64Array): void {
	const [a, b, c] = [3 * triangles[3 * t]!, 3 * triangles[3 * t + 1]!, 3 * triangles[3 * t + 2]!];
	// About the mesh's first vertex, so that a part far from the origin loses no digits.
	const p = (at: number, axis: number): number => positions[at + axis]! - positions[axis]!;
	const nx = (p(b, 1) - p(a, 1)) * (p(c, 2) - p(a, 2)) - (p(b, 2) - p(a, 2)) * (p(c, 1) - p(a, 1));
	const ny = (p(b, 2) - p(a, 2)) * (p(c, 0) - p(a, 0)) - (p(b, 0) - p(a, 0)) * (p(c, 2) - p(a, 2));
	const nz = (p(b, 0) - p(a, 0)) * (p(c, 1) - p(a, 1)) - (p(b, 1) - p(a, 1)) * (p(c, 0) - p(a, 0));
	sum[0]! += 1;
	sum[1]! += (p(a, 0) * nx + p(a, 1) * ny + p(a, 2) * nz) / 6;
	sum[2]! += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
	for (let axis = 0; axis < 3; axis += 1) {
		sum[3 + axis] = Math.min(sum[3 + axis]!, p(a, axis), p(b, axis), p(c, axis));
		sum[6 + axis] = Math.max(sum[6 + axis]!, p(a, axis), p(b, axis), p(c, axis));
	}
}

function markHollows(shells: MeshShell[], sums: Float64Array): void {
	const bodies = shells.flatMap(({ signedVolume }, i) => (signedVolume > 0 ? [i] : []));
	// Of very many loose parts only the largest can hold another one that matters.
	const largest = bodies
		.sort((a, b) => shells[b]!.signedVolume - shells[a]!.signedVolume)
		.slice(0, 100);
	for (let i = 0; i < shells.length; i += 1) {
		const shell = shells[i]!;
		shell.isHollow =
			shell.signedVolume < 0 &&
			largest.some((body) =>
				[0, 1, 2].every(
					(axis) =>
						sums[9 * i + 3 + axis]! > sums[9 * body + 3 + axis]! &&
						sums[9 * i + 6 + axis]! < sums[9 * body + 6 + axis]!
				)
			);
	}
}
