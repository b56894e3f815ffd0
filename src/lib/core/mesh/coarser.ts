import { measuresOf } from './measures';
import type { Mesh } from './mesh';
import { PlaneSums } from './plane-sums';

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
 * where that copy loses thin walls. Beyond `MOST_JUDGED_WHOLE` the copy's loss is told, and nothing can be judged.
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
 * A mesh of at most `mostTriangles` for what needs no more: corners within one cell of a grid become one,
 * where the planes around them meet best, so that edges stay sharp. A closed mesh stays closed; walls
 * thinner than a cell may vanish, which its volume tells.
 *
 * Source: Lindstrom 2000, Out-of-core simplification of large polygonal models, SIGGRAPH (from memory).
 *
 * @returns the mesh itself when it is coarse enough
 */
export function coarserMesh(mesh: Mesh, mostTriangles: number): Coarser {
	if (mesh.triangles.length / 3 <= mostTriangles) return { mesh, movedMm: 0, cornerOf: null };
	const { area, bounds } = measuresOf(mesh);
	for (let side = Math.sqrt((TRIANGLES_PER_CELL * area) / mostTriangles); ; side *= 1.15) {
		const { cellOf, count } = cellsOf(mesh, bounds.min, side);
		const triangles = mappedTriangles(mesh.triangles, cellOf);
		if (triangles.length / 3 > mostTriangles) continue;
		const positions = new PlaneSums(mesh, cellOf, count).meetings(side / 2);
		return { mesh: { positions, triangles }, movedMm: side * Math.sqrt(3), cornerOf: cellOf };
	}
}

function cellsOf(
	{ positions }: Mesh,
	[x, y, z]: readonly number[],
	side: number
): { cellOf: Uint32Array; count: number } {
	const known = new Map<number, number>();
	const cellOf = new Uint32Array(positions.length / 3);
	for (let v = 0; v < cellOf.length; v += 1) {
		const i = Math.floor((positions[3 * v]! - x!) / side);
		const j = Math.floor((positions[3 * v + 1]! - y!) / side);
		const k = Math.floor((positions[3 * v + 2]! - z!) / side);
		const key = (i * CELLS_A_SIDE + j) * CELLS_A_SIDE + k;
		let cell = known.get(key);
		if (cell === undefined) {
			cell = known.size;
			known.set(key, cell);
		}
		cellOf[v] = cell;
	}
	return { cellOf, count: known.size };
}

/** More than any mesh of a million triangles has along one side. */
const CELLS_A_SIDE = 2 ** 17;

/** Triangles over cells; those that fall together facing opposite ways cancel, as a wall without thickness. */
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
