import type { Edges } from './edges';
import { triangleCount, vertexAt, type Mesh } from './mesh';
import type { Nearness } from './nearness';
import type { OuterSide } from './outer-side';
import type { TriangleCut } from './part-cuts';
import { PointWelder } from './point-welder';
import type { Polygon } from './stitched';
import { areaNormals } from './triangle-normals';
import { UnionFind } from './union-find';
import { lengthOf } from './vector';

const MOST_PIECES = 1_000_000;

/** Triangles on the outside that nothing meets, those beside cut ones and the others: of each patch one tells for all. */
export function wholeTriangles(
	mesh: Mesh,
	{ count, starts, halfEdges }: Edges,
	cuts: ReadonlyMap<number, TriangleCut>,
	outside: OuterSide
): { beside: Polygon[]; apart: Polygon[] } {
	const isCutCorner = new Uint8Array(mesh.positions.length / 3);
	for (const t of cuts.keys())
		for (let k = 0; k < 3; k += 1) isCutCorner[mesh.triangles[3 * t + k]!] = 1;
	const joined = new UnionFind(triangleCount(mesh));
	for (let edge = 0; edge < count; edge += 1) {
		const from = starts[edge]!;
		if (starts[edge + 1]! - from !== 2) continue;
		const [a, b] = [Math.floor(halfEdges[from]! / 3), Math.floor(halfEdges[from + 1]! / 3)];
		if (!cuts.has(a) && !cuts.has(b)) joined.join(a, b);
	}
	const { groupOf, count: patches } = joined.groups();
	const largest = new Int32Array(patches).fill(-1);
	const areas = new Float64Array(patches).fill(-1);
	const normals = areaNormals(mesh);
	for (let t = 0; t < groupOf.length; t += 1) {
		const area = lengthOf(vertexAt({ positions: normals }, t));
		if (area <= areas[groupOf[t]!]!) continue;
		areas[groupOf[t]!] = area;
		largest[groupOf[t]!] = t;
	}
	const isKept = new Map<number, boolean>();
	const [beside, apart]: [Polygon[], Polygon[]] = [[], []];
	for (let t = 0; t < groupOf.length; t += 1) {
		if (cuts.has(t)) continue;
		const patch = groupOf[t]!;
		if (!isKept.has(patch)) isKept.set(patch, outside.has(largest[patch]!));
		if (!isKept.get(patch)) continue;
		const corners = [...mesh.triangles.subarray(3 * t, 3 * t + 3)];
		(corners.some((v) => isCutCorner[v]) ? beside : apart).push(corners);
	}
	return { beside, apart };
}

/** What is left of the cut triangles, over the mesh's corners and those that cutting makes; null when it is too much. */
export function cutPieces(
	{ positions, triangles }: Mesh,
	cuts: ReadonlyMap<number, TriangleCut>,
	outside: OuterSide,
	{ same }: Nearness
): { positions: Float64Array; polygons: Polygon[] } | null {
	const welder = new PointWelder(same);
	for (const t of cuts.keys()) {
		for (const v of triangles.subarray(3 * t, 3 * t + 3))
			welder.idOf(vertexAt({ positions }, v), v);
	}
	const added: number[] = [];
	const polygons: Polygon[] = [];
	for (const [triangle, cut] of cuts) {
		for (const piece of outside.piecesOf(triangle, cut)) {
			const corners = piece.map((point) => {
				const at = cut.frame.at(point);
				const next = (positions.length + added.length) / 3;
				const id = welder.idOf(at, next);
				if (id === next) added.push(...at);
				return id;
			});
			polygons.push(corners);
		}
		if (polygons.length > MOST_PIECES) return null;
	}
	const all = new Float64Array(positions.length + added.length);
	all.set(positions);
	all.set(added, positions.length);
	return { positions: all, polygons };
}
