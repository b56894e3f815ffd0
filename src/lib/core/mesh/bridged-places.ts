import type { BridgedDepths } from './bridged-depths';
import { coatedVertices, type CoatedVertices } from './coated-vertices';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import type { SurfaceDistance } from './surface-distance';
import { CenterGrid, trappedAir } from './trapped-air';
import { UnionFind } from './union-find';

export interface BridgedPlace {
	/** From 1, the deepest first. */
	number: number;
	kind: 'foot' | 'groove' | 'pit' | 'inner corner';
	/** The deepest point, mm. */
	at: Vec3;
	/** Farthest that the coat stays off the surface. */
	depthMm: number;
	/** Diameter of the largest ball that fits into the air left. */
	widthMm: number;
	/** Longest side of the box around the place. */
	lengthMm: number;
	areaCm2: number;
	airMl: number;
}

/** A place is a groove when it is this many times longer than wide; a choice. */
const GROOVE_RATIO = 4;
/** A right-angled inner corner is bridged by (√2 − 1) of the reach; up to a bit more it is called one. */
export const CORNER_DEPTH = 0.5;

/** Side of triangles of which `count` cover the mesh. */
export function sideFor(mesh: Mesh, count: number): number {
	const areaMm2 = coatedVertices(mesh).areasMm2.reduce((sum, mm2) => sum + mm2, 0);
	return Math.sqrt((2 * areaMm2) / (0.25 * count));
}

/** Vertices of each place that hangs together, the deepest place first. */
export function groupsOf({ triangles }: Mesh, depthsMm: Float64Array): number[][] {
	const joined = new UnionFind(depthsMm.length);
	for (let t = 0; t < triangles.length; t += 3) {
		const deep = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!].filter(
			(v) => depthsMm[v]! > 0
		);
		for (let k = 1; k < deep.length; k += 1) joined.join(deep[0]!, deep[k]!);
	}
	const groups = new Map<number, number[]>();
	depthsMm.forEach((depth, v) => {
		if (depth === 0) return;
		const root = joined.rootOf(v);
		const group = groups.get(root);
		if (group) group.push(v);
		else groups.set(root, [v]);
	});
	const depthOf = (group: number[]): number =>
		group.reduce((most, v) => Math.max(most, depthsMm[v]!), 0);
	return [...groups.values()]
		.map((group) => ({ group, depth: depthOf(group) }))
		.sort((a, b) => b.depth - a.depth || b.group.length - a.group.length)
		.map(({ group }) => group);
}

/** What the vertices of one place tell of it. */
export function placeOf(
	vertices: number[],
	mesh: Mesh,
	{ normals, areasMm2 }: CoatedVertices,
	{ depthsMm, centers }: BridgedDepths,
	surface: SurfaceDistance,
	reachMm: number
): Omit<BridgedPlace, 'number'> {
	const deepest = vertices.reduce(
		(best, v) => (depthsMm[v]! > depthsMm[best]! ? v : best),
		vertices[0]!
	);
	const rows = vertices.flatMap((v) => [
		...vertexAt(mesh, v),
		...vertexAt({ positions: normals }, v)
	]);
	const around = vertices.flatMap((v) => [...vertexAt({ positions: centers }, v)]);
	const { airMm3, widthMm } = trappedAir(surface, reachMm, rows, new CenterGrid(around, reachMm));
	const [low, high] = [[0, 1, 2].map(() => Infinity), [0, 1, 2].map(() => -Infinity)];
	for (const v of vertices) {
		vertexAt(mesh, v).forEach((value, axis) => {
			low[axis] = Math.min(low[axis]!, value);
			high[axis] = Math.max(high[axis]!, value);
		});
	}
	const depthMm = depthsMm[deepest]!;
	const lengthMm = Math.max(...high.map((value, axis) => value - low[axis]!));
	const isFoot = high[2]! < reachMm;
	const isCorner = depthMm < CORNER_DEPTH * reachMm;
	const isLong = lengthMm > GROOVE_RATIO * Math.max(widthMm, depthMm);
	return {
		kind: isFoot ? 'foot' : isCorner ? 'inner corner' : isLong ? 'groove' : 'pit',
		at: vertexAt(mesh, deepest),
		depthMm,
		widthMm,
		lengthMm,
		areaCm2: vertices.reduce((sum, v) => sum + areasMm2[v]!, 0) / 100,
		airMl: airMm3 / 1000
	};
}
