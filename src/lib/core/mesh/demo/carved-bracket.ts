import { isoSurface } from '../iso-surface';
import type { Mesh } from '../mesh';

/** An invented bracket, 150 mm long: a back, a shelf on a curved rib, and three carved flutes. */
export function carvedBracket(): Mesh {
	return isoSurface(distanceMm, { min: [-80, -36, -2], max: [80, 36, 98] }, 2);
}

/** Near the surface the distance to it, mm, negative inside: unions, cuts and roundings of plain solids. */
function distanceMm(x: number, y: number, z: number): number {
	const back = roundBox(x + 65, y, z - 41, 10, 30, 49, 4);
	const shelf = roundBox(x, y, z - 78, 75, 30, 10, 4);
	const rib = Math.max(Math.abs(y) - 12, ribProfile(x, z));
	const body = blend(blend(back, shelf, 5), rib, 4);
	const flutes = [-16, 0, 16].map((at) => Math.hypot(y - at, z - 90) - 3.5);
	const carved = Math.max(body, -Math.min(...flutes));
	return Math.max(carved, -z);
}

/** The rib fills the corner up to a quarter of a circle. */
function ribProfile(x: number, z: number): number {
	const hollow = 66 - Math.hypot(x - 18, z - 8);
	return Math.max(hollow, -60 - x, z - 76, x - 30);
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
