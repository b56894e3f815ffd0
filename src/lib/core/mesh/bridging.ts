import { bridgedDepths, type BridgedDepths } from './bridged-depths';
import { coatedVertices, type CoatedVertices } from './coated-vertices';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { refinedMesh } from './refine';
import { SurfaceDistance } from './surface-distance';
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

export interface Bridging {
	reachMm: number;
	/** The pattern in triangles fine enough for the map. */
	mesh: Mesh;
	/** Depth of air at each vertex of that mesh; 0 where the coat wets. */
	depthsMm: Float64Array;
	areaCm2: number;
	places: BridgedPlace[];
	/** How many shallower places are on the map and not in the list. */
	unlistedPlaces: number;
	/** Sides of the map's triangles; a recess narrower than this and without a vertex of its own may be missed. */
	finestMm: number;
}

export interface BridgingOptions {
	/** From `coatReachMm`. */
	reachMm: number;
	/** Shallower than this counts as wetted; by default a tenth of the reach. */
	leastDepthMm?: number;
	maxTriangles?: number;
}

/** More places than this nobody reads; a choice. */
const MOST_PLACES = 60;
/** A place is a groove when it is this many times longer than wide; a choice. */
const GROOVE_RATIO = 4;
/** A right-angled inner corner is bridged by (√2 − 1) of the reach; up to a bit more it is called one. */
const CORNER_DEPTH = 0.5;

/**
 * Where a first coat spans recesses of a pattern on the board instead of wetting them, as a map and as
 * a numbered list.
 *
 * @param mesh - closed, outward, millimeters, on the board
 * @throws RangeError when the reach is not above 0
 */
export function bridgingOf(
	mesh: Mesh,
	{ reachMm, leastDepthMm = reachMm / 10, maxTriangles = 600_000 }: BridgingOptions,
	surface = new SurfaceDistance(mesh)
): Bridging {
	if (!(reachMm > 0 && reachMm < Infinity)) {
		throw new RangeError(`reachMm is ${reachMm}; accepted: above 0`);
	}
	const finestMm = Math.max(reachMm / 2, sideFor(mesh, maxTriangles));
	const { mesh: fine } = refinedMesh(mesh, finestMm, maxTriangles);
	const coated = coatedVertices(fine);
	const overBoard = surface.withBoard(true);
	const bridged = bridgedDepths(fine, coated, overBoard, reachMm);
	const depthsMm = bridged.depthsMm.map((depth) => (depth >= leastDepthMm ? depth : 0));
	const areaMm2 = coated.areasMm2.reduce((sum, mm2, v) => sum + (depthsMm[v]! > 0 ? mm2 : 0), 0);
	const groups = groupsOf(fine, depthsMm).filter(
		(group) => !isSpeck(group, depthsMm, coated, reachMm)
	);
	const places = groups.slice(0, MOST_PLACES).map((vertices, i) => ({
		number: i + 1,
		...placeOf(vertices, fine, coated, { ...bridged, depthsMm }, overBoard, reachMm)
	}));
	return {
		reachMm,
		mesh: fine,
		depthsMm,
		areaCm2: areaMm2 / 100,
		places,
		unlistedPlaces: groups.length - places.length,
		finestMm
	};
}

/** Side of triangles of which `count` cover the mesh. */
function sideFor(mesh: Mesh, count: number): number {
	const areaMm2 = coatedVertices(mesh).areasMm2.reduce((sum, mm2) => sum + mm2, 0);
	return Math.sqrt((2 * areaMm2) / (0.25 * count));
}

/** Shallow and smaller than half a reach across: a single corner of the mesh, which no brush misses. It stays on the map. */
function isSpeck(
	group: readonly number[],
	depthsMm: Float64Array,
	{ areasMm2 }: CoatedVertices,
	reachMm: number
): boolean {
	const areaMm2 = group.reduce((sum, v) => sum + areasMm2[v]!, 0);
	return areaMm2 < (reachMm / 2) ** 2 && group.every((v) => depthsMm[v]! < CORNER_DEPTH * reachMm);
}

/** Vertices of each place that hangs together, the deepest place first. */
function groupsOf({ triangles }: Mesh, depthsMm: Float64Array): number[][] {
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

function placeOf(
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
