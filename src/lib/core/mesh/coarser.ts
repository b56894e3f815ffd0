import { measuresOf } from './measures';
import type { Mesh, Vec3 } from './mesh';
import { PlaneSums } from './plane-sums';
import { areaNormals } from './triangle-normals';
import { UnionFind } from './union-find';

export interface Coarser {
	mesh: Mesh;
	/** No corner moved farther; 0 when the mesh is as it was. */
	movedMm: number;
	/** The corner that each corner of the mesh became; null when the mesh is as it was. */
	cornerOf: Uint32Array | null;
}

/** How coarse a copy is on which something was computed. */
export interface SimplifiedCopy {
	triangles: number;
	movedMm: number;
	/** By how much its volume differs from that of the whole mesh. */
	volumeOffFraction: number;
}

/** How a copy differs from its original; null when it does not. */
export function simplifiedCopy(
	whole: Mesh,
	{ mesh, movedMm }: Pick<Coarser, 'mesh' | 'movedMm'>
): SimplifiedCopy | null {
	if (mesh === whole) return null;
	const volumeOffFraction = measuresOf(mesh).signedVolume / measuresOf(whole).signedVolume - 1;
	return { triangles: mesh.triangles.length / 3, movedMm, volumeOffFraction };
}

/** A copy whose volume is farther off has lost something that coats depend on. A choice. */
const MOST_VOLUME_OFF = 0.005;

/** Whether coats, bridged places and opening can be judged on it; null is the whole mesh. */
export function keepsVolume(copy: SimplifiedCopy | null): boolean {
	return Math.abs(copy?.volumeOffFraction ?? 0) <= MOST_VOLUME_OFF;
}

/** Finer meshes are judged on a copy of fewer triangles. A choice: some 10 s on one processor. */
const MOST_JUDGED = 500_000;

/** Up to here a mesh whose copy lost too much is judged as it is, whatever time that takes. A choice. */
export const MOST_JUDGED_WHOLE = 1_000_000;

/**
 * The mesh on which coats, bridged places and opening are judged: a copy of one that is very fine, the whole
 * where that copy loses something. Beyond `MOST_JUDGED_WHOLE` the copy's loss is told, and nothing can be judged.
 */
export function judgedMesh(whole: Mesh): { mesh: Mesh; simplified: SimplifiedCopy | null } {
	const copy = coarserMesh(whole, MOST_JUDGED);
	const simplified = simplifiedCopy(whole, copy);
	if (keepsVolume(simplified)) return { mesh: copy.mesh, simplified };
	const isJudged = whole.triangles.length / 3 <= MOST_JUDGED_WHOLE;
	return { mesh: whole, simplified: isJudged ? null : simplified };
}

/** Two triangles for each square of the grid on a flat face; a slanting one takes fewer for its area. */
const TRIANGLES_PER_CELL = 2.1;

/**
 * A mesh of at most `mostTriangles` for what needs no more: corners that hang together within one cell of a grid
 * and face one way become one, where the planes around them meet best. Edges stay sharp, the two sides of a thin
 * wall apart, a closed mesh closed; what turns back within a cell may vanish, which its volume tells.
 *
 * Source: Lindstrom 2000, Out-of-core simplification of large polygonal models, SIGGRAPH (from memory); there a
 * cell's corners become one whichever way they face.
 *
 * @param isSoup - no triangle shares its corners with another: they hang together by their place alone
 * @returns the mesh itself when it is coarse enough
 */
export function coarserMesh(mesh: Mesh, mostTriangles: number, isSoup = false): Coarser {
	if (mesh.triangles.length / 3 <= mostTriangles) return { mesh, movedMm: 0, cornerOf: null };
	const { area, bounds } = measuresOf(mesh);
	const faces = facesOf(mesh);
	for (let side = Math.sqrt((TRIANGLES_PER_CELL * area) / mostTriangles); ; side *= 1.15) {
		const cells = cellsOf(mesh, faces, bounds.min, side);
		const { groupOf, count } = isSoup ? numbered(cells) : joinedIn(cells, mesh);
		const triangles = mappedTriangles(mesh.triangles, groupOf);
		if (triangles.length / 3 > mostTriangles) continue;
		const positions = new PlaneSums(mesh, groupOf, count).meetings(side / 2);
		return { mesh: { positions, triangles }, movedMm: side * Math.sqrt(3), cornerOf: groupOf };
	}
}

/** No face of a box drawn square is at right angles to it: of the two sides of a wall one looks ahead along it, one back. */
const FACING: Vec3 = [0.42, 0.55, 0.72];

/** For each corner whether it faces along `FACING`. */
function facesOf({ positions, triangles }: Mesh): Uint8Array {
	const normals = areaNormals({ positions, triangles });
	const sums = new Float64Array(positions.length / 3);
	for (let k = 0; k < triangles.length; k += 1) {
		const n = k - (k % 3);
		sums[triangles[k]!]! +=
			FACING[0] * normals[n]! + FACING[1] * normals[n + 1]! + FACING[2] * normals[n + 2]!;
	}
	return Uint8Array.from(sums, (sum) => (sum > 0 ? 1 : 0));
}

/** For each corner a number for its cell of the grid and the way it faces. */
function cellsOf(
	{ positions }: Mesh,
	faces: Uint8Array,
	[x, y, z]: readonly number[],
	side: number
): Float64Array {
	return Float64Array.from(faces, (face, v) => {
		const i = Math.floor((positions[3 * v]! - x!) / side);
		const j = Math.floor((positions[3 * v + 1]! - y!) / side);
		const k = Math.floor((positions[3 * v + 2]! - z!) / side);
		return 2 * ((i * CELLS_A_SIDE + j) * CELLS_A_SIDE + k) + face;
	});
}

interface Groups {
	groupOf: Uint32Array;
	count: number;
}

/** Corners of one cell, each cell counted from 0. */
function numbered(cells: Float64Array): Groups {
	const known = new Map<number, number>();
	const groupOf = Uint32Array.from(cells, (cell) => {
		const group = known.get(cell) ?? known.size;
		if (group === known.size) known.set(cell, group);
		return group;
	});
	return { groupOf, count: known.size };
}

/** Corners of one cell that edges join within it. */
function joinedIn(cells: Float64Array, { triangles }: Mesh): Groups {
	const joined = new UnionFind(cells.length);
	for (let t = 0; t < triangles.length; t += 3) {
		const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
		if (cells[a] === cells[b]) joined.join(a, b);
		if (cells[b] === cells[c]) joined.join(b, c);
		if (cells[c] === cells[a]) joined.join(c, a);
	}
	const { groupOf, count } = joined.groups();
	return { groupOf: new Uint32Array(groupOf.buffer), count };
}

/** More than any mesh of a million triangles has along one side. */
const CELLS_A_SIDE = 2 ** 17;

/** Triangles over groups; those that fall together facing opposite ways cancel, as a wall without thickness. */
function mappedTriangles(triangles: Uint32Array, cellOf: Uint32Array): Uint32Array<ArrayBuffer> {
	const heads = new Map<number, number>();
	const kept: number[] = [];
	const facing: number[] = [];
	const next: number[] = [];
	for (let t = 0; t < triangles.length; t += 3) {
		let [a, b, c] = [
			cellOf[triangles[t]!]!,
			cellOf[triangles[t + 1]!]!,
			cellOf[triangles[t + 2]!]!
		];
		if (a === b || b === c || c === a) continue;
		// The lowest first: then either way round has one writing.
		while (a > b || a > c) [a, b, c] = [b, c, a];
		const way = b < c ? 1 : -1;
		const [low, high] = way > 0 ? [b, c] : [c, b];
		const key = a * CELLS_A_SIDE * 16 + ((low * 31 + high) & 0xf_ffff);
		const head = heads.get(key) ?? -1;
		let found = head;
		while (
			found >= 0 &&
			!(kept[3 * found] === a && kept[3 * found + 1] === low && kept[3 * found + 2] === high)
		) {
			found = next[found]!;
		}
		if (found >= 0) facing[found]! += way;
		else {
			heads.set(key, facing.length);
			next.push(head);
			kept.push(a, low, high);
			facing.push(way);
		}
	}
	return Uint32Array.from(
		facing.flatMap((ways, n) => {
			const [a, low, high] = [kept[3 * n]!, kept[3 * n + 1]!, kept[3 * n + 2]!];
			const one = ways > 0 ? [a, low, high] : [a, high, low];
			return Array.from({ length: Math.abs(ways) }, () => one).flat();
		})
	);
}
