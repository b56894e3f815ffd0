import type { Bvh } from './bvh';
import type { Vec3 } from './mesh';
import { dot, scaled, unitOf } from './vector';

/** Rays along none of the axes, nor along a diagonal, of what is drawn on a grid. */
const RAYS: readonly Vec3[] = [
	unitOf([0.5377, 0.4613, 0.7051]),
	unitOf([-0.6129, 0.3391, 0.7137]),
	unitOf([0.2917, -0.7643, 0.5753]),
	unitOf([-0.4337, -0.5519, -0.7121]),
	unitOf([0.8123, -0.1931, -0.5507])
];
/** A ray this near to a side may count it twice or not at all. Numerical choice. */
const SIDE = 1e-9;
const LEAST_UPWARD = 0.1;

/** Tells how often a closed mesh encloses a point, by what a ray from there passes. */
export class TurnsAround {
	readonly #bvh: Bvh;
	readonly #stack: number[] = [];

	constructor(bvh: Bvh) {
		this.#bvh = bvh;
	}

	/**
	 * Just above a point of a triangle, or of its plane: 0 outside, 1 inside, 2 where two parts overlap.
	 *
	 * @param up - normal of the triangle
	 */
	above(triangle: number, from: Vec3, up: Vec3): number {
		let turns = 0;
		for (const ray of RAYS) {
			const upward = dot(ray, up);
			// Flat along the triangle it would pass too much of what joins it.
			if (Math.abs(upward) < LEAST_UPWARD) continue;
			const counted = this.#along(from, upward > 0 ? ray : scaled(ray, -1), triangle);
			if (counted.isSure) return counted.turns;
			({ turns } = counted);
		}
		return turns;
	}

	#along(from: Vec3, ray: Vec3, own: number): { turns: number; isSure: boolean } {
		const { boxes, counts, links, starts, order } = this.#bvh;
		let turns = 0;
		let isSure = true;
		const stack = this.#stack;
		stack.length = 0;
		stack.push(0);
		for (let node = stack.pop(); node !== undefined; node = stack.pop()) {
			if (!passes(boxes, 6 * node, from, ray)) continue;
			const count = counts[node]!;
			if (count === 0) stack.push(node + 1, links[node]!);
			for (let i = starts[node]!; i < starts[node]! + count; i += 1) {
				const met = order[i] === own ? 0 : this.#meets(order[i]!, from, ray);
				if (met === null) isSure = false;
				else turns += met;
			}
		}
		return { turns, isSure };
	}

	/**
	 * 1 where the ray leaves through the triangle, −1 where it enters, 0 where it misses; null too near to a side.
	 * Source: Möller, Trumbore 1997, Fast, minimum storage ray-triangle intersection (from memory).
	 */
	#meets(triangle: number, [x, y, z]: Vec3, [rx, ry, rz]: Vec3): number | null {
		const { positions: p, triangles } = this.#bvh.mesh;
		const a = 3 * triangles[3 * triangle]!;
		const b = 3 * triangles[3 * triangle + 1]!;
		const c = 3 * triangles[3 * triangle + 2]!;
		const [ax, ay, az] = [p[a]!, p[a + 1]!, p[a + 2]!];
		const [ux, uy, uz] = [p[b]! - ax, p[b + 1]! - ay, p[b + 2]! - az];
		const [vx, vy, vz] = [p[c]! - ax, p[c + 1]! - ay, p[c + 2]! - az];
		const [hx, hy, hz] = [ry * vz - rz * vy, rz * vx - rx * vz, rx * vy - ry * vx];
		const det = ux * hx + uy * hy + uz * hz;
		if (det === 0) return 0;
		const [sx, sy, sz] = [x - ax, y - ay, z - az];
		const u = (sx * hx + sy * hy + sz * hz) / det;
		if (u < -SIDE || u > 1 + SIDE) return 0;
		const [qx, qy, qz] = [sy * uz - sz * uy, sz * ux - sx * uz, sx * uy - sy * ux];
		const v = (rx * qx + ry * qy + rz * qz) / det;
		if (v < -SIDE || u + v > 1 + SIDE) return 0;
		if ((vx * qx + vy * qy + vz * qz) / det < 0) return 0;
		if (u < SIDE || v < SIDE || u + v > 1 - SIDE) return null;
		// The determinant is minus the ray times the outward normal.
		return det < 0 ? 1 : -1;
	}
}

function passes(boxes: Float64Array, at: number, from: Vec3, ray: Vec3): boolean {
	let [near, far] = [0, Infinity];
	for (let axis = 0; axis < 3; axis += 1) {
		const a = (boxes[at + axis]! - from[axis]!) / ray[axis]!;
		const b = (boxes[at + 3 + axis]! - from[axis]!) / ray[axis]!;
		near = Math.max(near, Math.min(a, b));
		far = Math.min(far, Math.max(a, b));
	}
	return near <= far * (1 + 1e-12) + 1e-12;
}
