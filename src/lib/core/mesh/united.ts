import { bvhOf } from './bvh';
import { edgesOf, headOf, tailOf, type Edges } from './edges';
import { laidFlush } from './laid-flush';
import { measuresOf } from './measures';
import { triangleCount, vertexAt, type Mesh } from './mesh';
import { nearnessOf } from './nearness';
import { cutPieces, wholeTriangles } from './outer-polygons';
import { OuterSide } from './outer-side';
import { partCuts } from './part-cuts';
import { meshOfPolygons } from './polygons-mesh';
import { stitched } from './stitched';
import { areaNormals } from './triangle-normals';
import { TurnsAround } from './turns-around';
import { UnionFind } from './union-find';
import { unsharedEdges } from './unshared-edges';
import { lengthOf, subtract } from './vector';

export interface United {
	mesh: Mesh;
	/** Of the area of all parts, what lay within another part or between two. */
	hiddenFraction: number;
}

/** Beyond these nobody waits for parts to be joined. Choices. */
const MOST_TRIANGLES = 1_000_000;
const MOST_PARTS = 10_000;

/**
 * One body of closed parts that touch, overlap or lie in each other: of their faces those on the outside of all. Parts
 * that stand apart stay as they are, hollows too. Where parts meet, triangles are cut; corners move by a
 * ten-thousandth of the box's diagonal at most.
 *
 * @param mesh - in any unit, every part closed and facing outward
 * @returns null when no part meets another, when it is too much, or when what comes out would not be closed
 */
export function unitedMesh(mesh: Mesh): United | null {
	if (triangleCount(mesh) > MOST_TRIANGLES) return null;
	const edges = edgesOf(mesh);
	const { groupOf: partOf, count } = partsOf(mesh, edges);
	if (count < 2 || count > MOST_PARTS || !isClosed(mesh, edges)) return null;
	const { min, max } = measuresOf(mesh).bounds;
	const near = nearnessOf(lengthOf(subtract(max, min)));
	const flush = laidFlush(mesh, partOf, areasOf(mesh, partOf, count), near);
	const bvh = bvhOf(flush);
	const cuts = partCuts(bvh, partOf, near);
	if (cuts === null) return null;
	const outside = new OuterSide(flush, new TurnsAround(bvh), partOf, near);
	const whole = wholeTriangles(flush, edges, cuts, outside);
	if (whole.apart.length === triangleCount(mesh)) return null;
	const pieces = cutPieces(flush, cuts, outside, near);
	if (pieces === null) return null;
	const joined = stitched(
		pieces.positions,
		[...pieces.polygons, ...whole.beside],
		whole.apart,
		near.same
	);
	const united = unsharedEdges(meshOfPolygons(pieces.positions, [...joined, ...whole.apart]));
	const hiddenFraction = 1 - measuresOf(united).area / measuresOf(mesh).area;
	const isMended = hiddenFraction > 1e-9 || !isClosed(mesh, edges, true);
	return isMended && isClosed(united, edgesOf(united), true)
		? { mesh: united, hiddenFraction }
		: null;
}

/** What hangs together over edges of two triangles: parts that share an edge meet there in four. */
function partsOf(mesh: Mesh, { count, starts, halfEdges }: Edges) {
	const joined = new UnionFind(triangleCount(mesh));
	for (let edge = 0; edge < count; edge += 1) {
		const from = starts[edge]!;
		if (starts[edge + 1]! - from === 2)
			joined.join(Math.floor(halfEdges[from]! / 3), Math.floor(halfEdges[from + 1]! / 3));
	}
	return joined.groups();
}

function areasOf(mesh: Mesh, partOf: ArrayLike<number>, count: number): Float64Array {
	const areas = new Float64Array(count);
	const normals = areaNormals(mesh);
	for (let t = 0; t < triangleCount(mesh); t += 1)
		areas[partOf[t]!]! += lengthOf(vertexAt({ positions: normals }, t)) / 2;
	return areas;
}

/** Whether each edge is run along as often one way as the other, and by two only when asked for. */
function isClosed(mesh: Mesh, { count, starts, halfEdges }: Edges, byTwo = false): boolean {
	for (let edge = 0; edge < count; edge += 1) {
		const around = halfEdges.subarray(starts[edge]!, starts[edge + 1]!);
		if (tailOf(mesh, around[0]!) === headOf(mesh, around[0]!)) continue;
		if (byTwo && around.length !== 2) return false;
		const forth = around.filter((half) => tailOf(mesh, half) < headOf(mesh, half)).length;
		if (2 * forth !== around.length) return false;
	}
	return true;
}
