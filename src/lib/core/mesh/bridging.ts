import { bridgedDepths } from './bridged-depths';
import { CORNER_DEPTH, groupsOf, placeOf, sideFor, type BridgedPlace } from './bridged-places';
import { coatedVertices, type CoatedVertices } from './coated-vertices';
import type { Mesh } from './mesh';
import { refinedMesh } from './refine';
import { SurfaceDistance } from './surface-distance';

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
