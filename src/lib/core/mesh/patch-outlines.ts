import { edgesOf, headOf, tailOf, type Edges } from './edges';
import { vertexAt, type Mesh } from './mesh';
import { areaNormals } from './triangle-normals';
import { UnionFind } from './union-find';

/** Patches smaller than this part of the largest one are noise of the samples. A choice. */
const LEAST_PART = 0.1;

/**
 * The lines around what is marked on a mesh, each closed: x, y, z after each other.
 *
 * @param marks - by triangle, those that nobody judged left out: they go with the nearest one that somebody did
 */
export function patchOutlines(mesh: Mesh, marks: ReadonlyMap<number, boolean>): number[][] {
	const edges = edgesOf(mesh);
	const isIn = spread(mesh, edges, marks);
	keepLargest(mesh, edges, isIn);
	const next = new Map<number, number>();
	for (let edge = 0; edge < edges.count; edge += 1) {
		const around = edges.halfEdges.subarray(edges.starts[edge]!, edges.starts[edge + 1]!);
		const inside = around.filter((half) => isIn[Math.floor(half / 3)]);
		if (around.length === 2 && inside.length === 1)
			next.set(tailOf(mesh, inside[0]!), headOf(mesh, inside[0]!));
	}
	const lines: number[][] = [];
	for (const start of [...next.keys()]) {
		const line: number[] = [];
		let at = start;
		while (next.has(at)) {
			line.push(...vertexAt(mesh, at));
			const following = next.get(at)!;
			next.delete(at);
			at = following;
		}
		// Where two patches touch in a corner one of their lines stays open, and would be closed across the pattern.
		if (at === start && line.length > 6) lines.push(line);
	}
	return lines;
}

function spread(
	mesh: Mesh,
	{ edgeOf, starts, halfEdges }: Edges,
	marks: ReadonlyMap<number, boolean>
): Uint8Array {
	const isIn = new Uint8Array(mesh.triangles.length / 3);
	const isKnown = new Uint8Array(isIn.length);
	const queue = [...marks.keys()];
	for (const [t, mark] of marks) {
		isIn[t] = mark ? 1 : 0;
		isKnown[t] = 1;
	}
	for (let head = 0; head < queue.length; head += 1) {
		const t = queue[head]!;
		for (let half = 3 * t; half < 3 * t + 3; half += 1) {
			const edge = edgeOf[half]!;
			for (let k = starts[edge]!; k < starts[edge + 1]!; k += 1) {
				const other = Math.floor(halfEdges[k]! / 3);
				if (isKnown[other]) continue;
				isKnown[other] = 1;
				isIn[other] = isIn[t]!;
				queue.push(other);
			}
		}
	}
	return isIn;
}

function keepLargest(mesh: Mesh, { count, starts, halfEdges }: Edges, isIn: Uint8Array): void {
	const joined = new UnionFind(isIn.length);
	for (let edge = 0; edge < count; edge += 1) {
		const [first, ...more] = [...halfEdges.subarray(starts[edge]!, starts[edge + 1]!)]
			.map((half) => Math.floor(half / 3))
			.filter((t) => isIn[t]);
		for (const t of more) joined.join(first!, t);
	}
	const normals = areaNormals(mesh);
	const areas = new Map<number, number>();
	isIn.forEach((mark, t) => {
		const own = mark ? Math.hypot(...vertexAt({ positions: normals }, t)) : 0;
		if (mark) areas.set(joined.rootOf(t), (areas.get(joined.rootOf(t)) ?? 0) + own);
	});
	const least = LEAST_PART * Math.max(0, ...areas.values());
	isIn.forEach((mark, t) => {
		if (mark && areas.get(joined.rootOf(t))! < least) isIn[t] = 0;
	});
}
