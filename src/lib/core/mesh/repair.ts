import { doublesOf, uselessDoubles } from './doubles';
import { edgesOf, tailOf, type Edges } from './edges';
import { measuresOf } from './measures';
import type { Mesh } from './mesh';
import { shellsOf } from './shells';
import { areaNormals } from './triangle-normals';
import { unitedMesh } from './united';
import { weldMesh } from './weld';

/** What a repair did, to be told to the person; zeros where nothing was needed. */
export interface Repairs {
	joinedVertices: number;
	droppedTriangles: number;
	turnedTriangles: number;
	/** Of the area, what lay between or within parts that are joined into one body. */
	hiddenFraction: number;
}

export interface Repaired {
	mesh: Mesh;
	repairs: Repairs;
}

/**
 * A mesh with the repairs that change no shape: equal vertices joined, triangles without area and
 * doubles dropped, both where parts stand face to face, neighbors turned alike and closed parts outward.
 * Holes are left: closing them would be a guess.
 */
export function repairedMesh(mesh: Mesh): Repaired {
	const welded = weldMesh(mesh);
	const { mesh: kept, hiddenFraction, walls } = withoutUseless(welded);
	const { mesh: turned, count } = turnedAlike(kept);
	return {
		mesh: turned,
		repairs: {
			joinedVertices: (mesh.positions.length - welded.positions.length) / 3,
			droppedTriangles: (mesh.triangles.length - kept.triangles.length) / 3 - walls,
			turnedTriangles: count,
			hiddenFraction
		}
	};
}

function withoutUseless(mesh: Mesh): { mesh: Mesh; hiddenFraction: number; walls: number } {
	const { positions, triangles } = mesh;
	const normals = areaNormals(mesh);
	const { dropped, walls } = uselessDoubles(mesh, doublesOf(mesh));
	const kept = new Uint32Array(triangles.length);
	let count = 0;
	for (let t = 0; t < triangles.length / 3; t += 1) {
		const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
		// One whose corners are apart but in a line may hold its neighbors together: it stays.
		const isPoint = a === b || b === c || c === a;
		if (isPoint || dropped.has(t) || walls.has(t) || Number.isNaN(normals[3 * t]!)) continue;
		kept[count] = a;
		kept[count + 1] = b;
		kept[count + 2] = c;
		count += 3;
	}
	const useful = count === triangles.length ? mesh : { positions, triangles: kept.slice(0, count) };
	const hiddenFraction = walls.size > 0 ? 1 - measuresOf(useful).area / measuresOf(mesh).area : 0;
	return { mesh: useful, hiddenFraction, walls: walls.size };
}

function turnedAlike(mesh: Mesh): { mesh: Mesh; count: number } {
	const edges = edgesOf(mesh);
	const isTurned = turnsToAgree(mesh, edges);
	const isAgreed = isTurned.every((value) => value === 0);
	const agreeing = isAgreed ? mesh : flipped(mesh, isTurned);
	const { shells, shellOf } = shellsOf(agreeing, isAgreed ? edges : edgesOf(agreeing));
	const isClosed = closedShells(edges, shellOf, shells.length);
	for (let t = 0; t < isTurned.length; t += 1) {
		const shell = shellOf[t]!;
		if (isClosed[shell] && shells[shell]!.signedVolume < 0 && !shells[shell]!.isHollow) {
			isTurned[t] = isTurned[t] ? 0 : 1;
		}
	}
	const count = isTurned.reduce((sum, value) => sum + value, 0);
	return { mesh: count === 0 ? mesh : flipped(mesh, isTurned), count };
}

/** Walks each part from its first triangle over edges of two and turns what disagrees. */
function turnsToAgree(mesh: Mesh, { edgeOf, starts, halfEdges }: Edges): Uint8Array {
	const count = mesh.triangles.length / 3;
	const isTurned = new Uint8Array(count);
	const isSeen = new Uint8Array(count);
	for (let first = 0; first < count; first += 1) {
		if (isSeen[first]) continue;
		isSeen[first] = 1;
		const stack = [first];
		for (let t = stack.pop(); t !== undefined; t = stack.pop()) {
			for (let half = 3 * t; half < 3 * t + 3; half += 1) {
				const from = starts[edgeOf[half]!]!;
				if (starts[edgeOf[half]! + 1]! - from !== 2) continue;
				const other = halfEdges[from]! === half ? halfEdges[from + 1]! : halfEdges[from]!;
				const neighbor = Math.floor(other / 3);
				if (isSeen[neighbor]) continue;
				isSeen[neighbor] = 1;
				const runsAlike = tailOf(mesh, half) === tailOf(mesh, other) ? 1 : 0;
				isTurned[neighbor] = isTurned[t]! ^ runsAlike;
				stack.push(neighbor);
			}
		}
	}
	return isTurned;
}

function closedShells(
	{ count, starts, halfEdges }: Edges,
	shellOf: Int32Array,
	shells: number
): Uint8Array {
	const isClosed = new Uint8Array(shells).fill(1);
	for (let edge = 0; edge < count; edge += 1) {
		const from = starts[edge]!;
		if ((starts[edge + 1]! - from) % 2 === 1)
			isClosed[shellOf[Math.floor(halfEdges[from]! / 3)]!] = 0;
	}
	return isClosed;
}

function flipped({ positions, triangles }: Mesh, isTurned: Uint8Array): Mesh {
	const turned = triangles.slice();
	for (let t = 0; t < isTurned.length; t += 1) {
		if (!isTurned[t]) continue;
		turned[3 * t + 1] = triangles[3 * t + 2]!;
		turned[3 * t + 2] = triangles[3 * t + 1]!;
	}
	return { positions, triangles: turned };
}

/** The same with parts that touch or overlap joined into one body, where that can be done. */
export function joinedParts(repaired: Repaired): Repaired {
	const united = unitedMesh(repaired.mesh);
	if (united === null) return repaired;
	const { hiddenFraction } = repaired.repairs;
	const together = 1 - (1 - hiddenFraction) * (1 - united.hiddenFraction);
	return {
		mesh: united.mesh,
		repairs: { ...repaired.repairs, hiddenFraction: Math.max(0, together) }
	};
}
