import type { Vec3 } from './mesh';

export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
	a[1] * b[2] - a[2] * b[1],
	a[2] * b[0] - a[0] * b[2],
	a[0] * b[1] - a[1] * b[0]
];
export const lengthOf = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);
export const scaled = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];

/** The vector at length one; a vector without length stays so. */
export const unitOf = (a: Vec3): Vec3 => scaled(a, 1 / (lengthOf(a) || 1));

/** Two unit vectors across a unit vector and each other. */
export function acrossTo(direction: Vec3): [Vec3, Vec3] {
	const u = unitOf(cross(Math.abs(direction[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0], direction));
	return [u, cross(direction, u)];
}
