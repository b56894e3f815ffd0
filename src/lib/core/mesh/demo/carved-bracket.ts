import { isoSurface } from '../iso-surface';
import type { Mesh } from '../mesh';

const CELL = 2;

/** An invented bracket, 150 mm long: a back with three carved flutes, and a shelf on a curved rib. */
export function carvedBracket(): Mesh {
	// The flat faces lie midway between the grid's planes: on one of them they would come out as slivers.
	const bounds = { min: [-80, -37, -CELL], max: [80, 37, 98] } as const;
	const { positions, triangles } = isoSurface(overBoardMm, bounds, CELL);
	// What the cells leave below the board is a cap: pressed flat, it meets the walls in a sharp foot.
	return { positions: positions.map((at, i) => (i % 3 === 2 ? Math.max(0, at) : at)), triangles };
}

/** Rises downward at every point below the board, so that the cap there lies in one layer over itself. */
function overBoardMm(x: number, y: number, z: number): number {
	return z < 0 ? Math.abs(distanceMm(x, y, 0)) - z : distanceMm(x, y, z);
}

/** Near the surface the distance to it, mm, negative inside: unions, cuts and roundings of plain solids. */
function distanceMm(x: number, y: number, z: number): number {
	const back = roundBox(x + 65, y, z - 38, 10, 30, 49, 4);
	const shelf = roundBox(x, y, z - 77, 75, 30, 10, 4);
	const rib = Math.max(Math.abs(y) - 12, ribProfile(x, z));
	const body = blend(blend(back, shelf, 5), rib, 5);
	const flutes = [-16, 0, 16].map((at) => 3.5 - Math.hypot(x + 76, y - at));
	// Where back and shelf lie in one plane, the blend would bulge out of it.
	const planes = [z - 87, -75 - x, Math.abs(y) - 30];
	return Math.max(body, ...planes, ...flutes);
}

/** The rib fills the corner up to a quarter of a circle. */
function ribProfile(x: number, z: number): number {
	const hollow = 66.5 - Math.hypot(x - 18, z - 8);
	return Math.max(hollow, -60 - x, z - 75, x - 30);
}

function roundBox(
	x: number,
	y: number,
	z: number,
	a: number,
	b: number,
	c: number,
	r: number
): number {
	const [u, v, w] = [Math.abs(x) - a + r, Math.abs(y) - b + r, Math.abs(z) - c + r];
	const outside = Math.hypot(Math.max(u, 0), Math.max(v, 0), Math.max(w, 0));
	return outside + Math.min(Math.max(u, v, w), 0) - r;
}

/** A union whose inner corner is filled over `r` millimeters. */
function blend(a: number, b: number, r: number): number {
	const mix = Math.max(0, r - Math.abs(a - b)) / r;
	return Math.min(a, b) - (mix * mix * r) / 4;
}
