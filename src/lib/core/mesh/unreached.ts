import type { Brush, Unreached } from '../geometry/brush';
import { RollingBall } from './ball-contact';
import { bridgedDepths } from './bridged-depths';
import { groupsOf, placeOf, sideFor } from './bridged-places';
import { coatedVertices } from './coated-vertices';
import type { Mesh } from './mesh';
import { openVertices } from './open-vertices';
import { refinedMesh } from './refine';
import { SurfaceDistance } from './surface-distance';
import { areaNormals } from './triangle-normals';

/** Coarser than this a hole could lie between two vertices; finer takes longer than anybody waits. A choice. */
const MOST_TRIANGLES = 120_000;
const MOST_PLACES = 20;
/** Less than this in all is the rounding of a rim, no place that anybody would look for. A choice. */
const LEAST_CM2 = 0.01;

/**
 * What a brush does not reach on a pattern on the board: a ball as wide as the brush is rolled over it from where it
 * comes in from outside; surface that stays farther from it than the tips of the bristles reach is left out.
 *
 * @param mesh - closed, outward, millimeters, on the board
 */
export function unreachedOf(
	mesh: Mesh,
	brush: Brush,
	surface = new SurfaceDistance(mesh)
): Unreached {
	const radius = brush.widthMm / 2;
	const { mesh: fine } = refinedMesh(
		mesh,
		Math.max(radius / 2, sideFor(mesh, MOST_TRIANGLES)),
		MOST_TRIANGLES
	);
	const coated = coatedVertices(fine);
	const overBoard = surface.withBoard(true);
	const open = openVertices(fine, coated, new RollingBall(overBoard, radius), overBoard);
	const bridged = bridgedDepths(fine, coated, overBoard, radius, open);
	const areasMm2 = areasBeyond(fine, coated.isCoated, bridged.depthsMm, brush.reachMm);
	const areaCm2 = areasMm2.reduce((sum, mm2) => sum + mm2, 0) / 100;
	if (areaCm2 < LEAST_CM2) return { brush, areaCm2: 0, places: [], unlistedPlaces: 0 };
	const depthsMm = bridged.depthsMm.map((depth) => (depth > brush.reachMm ? depth : 0));
	const places = groupsOf(fine, depthsMm)
		.map((vertices) => {
			const { at, widthMm, depthMm } = placeOf(
				vertices,
				fine,
				coated,
				{ ...bridged, depthsMm },
				overBoard,
				radius
			);
			const areaCm2 = vertices.reduce((sum, v) => sum + areasMm2[v]!, 0) / 100;
			return { xMm: at[0], yMm: at[1], zMm: at[2], widthMm, depthMm, areaCm2 };
		})
		.sort((a, b) => b.areaCm2 - a.areaCm2);
	return {
		brush,
		areaCm2,
		places: places.slice(0, MOST_PLACES).map((place, i) => ({ number: i + 1, ...place })),
		unlistedPlaces: Math.max(0, places.length - MOST_PLACES)
	};
}

/** For each vertex its third of what lies deeper than `least` in the triangles around it, mm²; depths are taken as straight between vertices. */
function areasBeyond(
	{ triangles, positions }: Mesh,
	isCoated: Uint8Array,
	depths: Float64Array,
	least: number
): Float64Array {
	const areas = new Float64Array(depths.length);
	const normals = areaNormals({ triangles, positions });
	for (let t = 0; t < triangles.length; t += 3) {
		if (!isCoated[t / 3]) continue;
		const corners = [...triangles.subarray(t, t + 3)];
		const part = partBeyond(corners.map((v) => depths[v]! - least) as [number, number, number]);
		if (part === 0) continue;
		const mm2 = (part * Math.hypot(normals[t]!, normals[t + 1]!, normals[t + 2]!)) / 2;
		const deep = corners.filter((v) => depths[v]! > least);
		for (const v of deep) areas[v]! += mm2 / deep.length;
	}
	return areas;
}

/** The part of a triangle in which what is given at its corners is above 0. */
function partBeyond([a, b, c]: [number, number, number]): number {
	const above = [a, b, c].filter((value) => value > 0).length;
	if (above === 0 || above === 3) return above / 3;
	const alone = [a, b, c].findIndex((value) => value > 0 === (above === 1));
	const [own, next, last] = [0, 1, 2].map((k) => [a, b, c][(alone + k) % 3]!) as [
		number,
		number,
		number
	];
	const corner = (own / (own - next)) * (own / (own - last));
	return above === 1 ? corner : 1 - corner;
}
