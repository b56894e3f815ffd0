import { bvhOf } from './bvh';
import { doublesOf } from './doubles';
import { edgesOf, headOf, tailOf, type Edges } from './edges';
import { triangleCount, vertexAt, type Mesh, type Vec3 } from './mesh';
import { nestedShells } from './nested-shells';
import { selfCrossings } from './self-crossings';
import { shellsOf, type MeshShell } from './shells';
import { areaNormals } from './triangle-normals';

export type FaultKind =
	| 'open edges'
	| 'edges of three or more'
	| 'turned neighbors'
	| 'inside out'
	| 'loose parts'
	| 'parts within parts'
	| 'doubled triangles'
	| 'triangles without area'
	| 'slivers'
	| 'crossing triangles'
	| 'no volume';

interface Fault {
	kind: FaultKind;
	count: number;
	/** Triangles to show on the model, at most 1000 of them. */
	triangles: number[];
	/** One place, in the mesh's unit. */
	at: Vec3;
}

/** What can still be trusted of a mesh as it is. */
interface Trust {
	area: boolean;
	volume: boolean;
	/** Coats, bridging and opening: they need to know inside from outside. */
	distance: boolean;
}

export interface Health {
	isWatertight: boolean;
	faults: Fault[];
	shells: MeshShell[];
	trust: Trust;
	/** False when the search for crossings stopped at its limit. */
	isComplete: boolean;
	/** Smallest parts of which nobody looked whether they lie within others. */
	unlookedParts: number;
}

const MOST_SHOWN = 1000;
/** A triangle is a sliver when its height is less than this part of its longest side. A choice. */
const SLIVER = 1e-3;

/** Beyond this nobody waits for the search for crossings; `isComplete` says so. A choice. */
const MOST_SEARCHED = 1_000_000;

/** What is wrong with a mesh, named and with places; nothing is changed. */
export function healthOf(mesh: Mesh, mostSearched = MOST_SEARCHED): Health {
	const edges = edgesOf(mesh);
	const { shells, shellOf } = shellsOf(mesh, edges);
	const crossings =
		triangleCount(mesh) > mostSearched
			? { triangles: [], isComplete: false }
			: selfCrossings(bvhOf(mesh));
	const { open, crowded, turned } = edgeFaults(mesh, edges);
	const { flat, slivers } = shapeFaults(mesh);
	const turnedShells = shells.map(
		({ signedVolume, isHollow }) => signedVolume < 0 && !isHollow && open.length === 0
	);
	const { isNested, unlooked } = nestedShells(mesh, { shells, shellOf });
	const nested = isNested.reduce((sum, mark) => sum + mark, 0);
	const crossed = new Set(crossings.triangles.map((t) => shellOf[t]!));
	// Folds within one part are small; where parts overlap nobody knows inside from outside.
	const overlaps = nested > 0 || crossed.size > 1;
	const largest = shells.reduce(
		(best, shell, i) => (shell.area > shells[best]!.area ? i : best),
		0
	);
	const volume = shells.reduce((sum, shell) => sum + shell.signedVolume, 0);
	const area = shells.reduce((sum, shell) => sum + shell.area, 0);
	const isSheet = Math.abs(volume) < 1e-6 * area ** 1.5;
	const where = (test: (t: number) => boolean): number[] =>
		Array.from(shellOf.keys()).filter((t) => test(t));
	const faults = [
		faultOf(mesh, 'open edges', open),
		faultOf(mesh, 'edges of three or more', crowded),
		faultOf(mesh, 'turned neighbors', turned),
		faultOf(
			mesh,
			'inside out',
			turnedShells.some(Boolean) ? where((t) => turnedShells[shellOf[t]!]!) : []
		),
		faultOf(
			mesh,
			'loose parts',
			shells.length > 1 ? where((t) => isLoose(shells, shellOf[t]!, largest)) : [],
			shells.filter((_, i) => isLoose(shells, i, largest)).length
		),
		faultOf(
			mesh,
			'parts within parts',
			nested > 0 ? where((t) => isNested[shellOf[t]!] === 1) : [],
			nested
		),
		faultOf(mesh, 'doubled triangles', [...doublesOf(mesh).keys()]),
		faultOf(mesh, 'triangles without area', flat),
		faultOf(mesh, 'slivers', slivers),
		faultOf(mesh, 'crossing triangles', crossings.triangles),
		faultOf(mesh, 'no volume', isSheet ? [0] : [])
	].filter((fault) => fault !== null);
	const isWatertight = open.length === 0 && crowded.length === 0 && turned.length === 0;
	return {
		isWatertight,
		faults,
		shells,
		trust: {
			area: crossings.triangles.length === 0 && !overlaps,
			volume: isWatertight && !isSheet && crossings.triangles.length === 0 && !overlaps,
			distance: isWatertight && !isSheet && !overlaps
		},
		isComplete: crossings.isComplete,
		unlookedParts: unlooked
	};
}

function isLoose(shells: MeshShell[], i: number, largest: number): boolean {
	return i !== largest && !shells[i]!.isHollow;
}

function faultOf(
	mesh: Mesh,
	kind: FaultKind,
	triangles: number[],
	count = triangles.length
): Fault | null {
	const first = triangles[0];
	if (first === undefined) return null;
	const at = vertexAt(mesh, mesh.triangles[3 * first]!);
	return { kind, count, triangles: triangles.slice(0, MOST_SHOWN), at };
}

function edgeFaults(mesh: Mesh, { count, starts, halfEdges }: Edges) {
	const open: number[] = [];
	const crowded: number[] = [];
	const turned: number[] = [];
	for (let edge = 0; edge < count; edge += 1) {
		const from = starts[edge]!;
		const uses = starts[edge + 1]! - from;
		const first = halfEdges[from]!;
		const triangle = Math.floor(first / 3);
		if (tailOf(mesh, first) === headOf(mesh, first)) continue;
		if (uses === 1) open.push(triangle);
		else if (uses > 2) crowded.push(triangle);
		else if (tailOf(mesh, first) === tailOf(mesh, halfEdges[from + 1]!)) turned.push(triangle);
	}
	return { open, crowded, turned };
}

function shapeFaults({ positions, triangles }: Mesh) {
	const flat: number[] = [];
	const slivers: number[] = [];
	const normals = areaNormals({ positions, triangles });
	for (let t = 0; t < normals.length / 3; t += 1) {
		const twice = Math.hypot(normals[3 * t]!, normals[3 * t + 1]!, normals[3 * t + 2]!);
		let longestSquared = 0;
		for (let k = 0; k < 3; k += 1) {
			const p = 3 * triangles[3 * t + k]!;
			const q = 3 * triangles[3 * t + ((k + 1) % 3)]!;
			const x = positions[p]! - positions[q]!;
			const y = positions[p + 1]! - positions[q + 1]!;
			const z = positions[p + 2]! - positions[q + 2]!;
			longestSquared = Math.max(longestSquared, x * x + y * y + z * z);
		}
		if (twice <= 1e-12 * longestSquared) flat.push(t);
		else if (twice < SLIVER * longestSquared) slivers.push(t);
	}
	return { flat, slivers };
}
