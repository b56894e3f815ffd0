import type { Bvh } from './bvh';

/** Where on a triangle a closest point lies. */
export const FACE = 0;
/** Sides are 1 to 3: from corner 0, 1 or 2 to the next one. */
export const SIDE = 1;
/** Corners are 4 to 6. */
export const CORNER = 4;

/**
 * Finds the point of a mesh nearest to a given one. One object serves many questions: the answer
 * stays in its fields until the next, and the last triangle is tried first, because neighbors ask alike.
 */
export class ClosestPoint {
	readonly #bvh: Bvh;
	readonly #corners: Float64Array;
	readonly #stack = new Int32Array(256);
	readonly #stackDistances = new Float64Array(256);
	triangle = -1;
	/** FACE, a SIDE or a CORNER. */
	feature = FACE;
	x = 0;
	y = 0;
	z = 0;
	distanceSquared = Infinity;

	constructor(bvh: Bvh) {
		this.#bvh = bvh;
		const { positions, triangles } = bvh.mesh;
		this.#corners = new Float64Array(3 * triangles.length);
		// Corners in the tree's order, so that a leaf's triangles lie side by side in memory.
		bvh.order.forEach((t, place) => {
			for (let k = 0; k < 9; k += 1) {
				this.#corners[9 * place + k] =
					positions[3 * triangles[3 * t + Math.floor(k / 3)]! + (k % 3)]!;
			}
		});
	}

	#place = -1;

	/** Answers for (x, y, z); false when nothing lies within `reach`. */
	find(x: number, y: number, z: number, reach = Infinity): boolean {
		const { boxes, links, counts, starts, order } = this.#bvh;
		this.distanceSquared = reach * reach;
		const hint = this.#place;
		this.#place = -1;
		if (hint >= 0) this.#tryTriangle(hint, x, y, z);
		const stack = this.#stack;
		const distances = this.#stackDistances;
		let depth = 0;
		let node = 0;
		let near = boxDistance(boxes, 0, x, y, z);
		for (;;) {
			if (near < this.distanceSquared) {
				const count = counts[node]!;
				if (count > 0) {
					const from = starts[node]!;
					for (let i = from; i < from + count; i += 1)
						if (i !== hint) this.#tryTriangle(i, x, y, z);
				} else {
					const left = node + 1;
					const right = links[node]!;
					const toLeft = boxDistance(boxes, 6 * left, x, y, z);
					const toRight = boxDistance(boxes, 6 * right, x, y, z);
					const isLeftNearer = toLeft <= toRight;
					stack[depth] = isLeftNearer ? right : left;
					distances[depth] = isLeftNearer ? toRight : toLeft;
					depth += 1;
					node = isLeftNearer ? left : right;
					near = isLeftNearer ? toLeft : toRight;
					continue;
				}
			}
			do {
				if (depth === 0) {
					if (this.#place < 0) {
						this.#place = hint;
						return false;
					}
					this.triangle = order[this.#place]!;
					return true;
				}
				depth -= 1;
				node = stack[depth]!;
				near = distances[depth]!;
			} while (near >= this.distanceSquared);
		}
	}

	/** Source: Ericson 2005, Real-Time Collision Detection, section 5.1.5 (from memory). */
	#tryTriangle(place: number, x: number, y: number, z: number): void {
		const c = this.#corners;
		const at = 9 * place;
		const ax = c[at]!;
		const ay = c[at + 1]!;
		const az = c[at + 2]!;
		const abx = c[at + 3]! - ax;
		const aby = c[at + 4]! - ay;
		const abz = c[at + 5]! - az;
		const acx = c[at + 6]! - ax;
		const acy = c[at + 7]! - ay;
		const acz = c[at + 8]! - az;
		const apx = x - ax;
		const apy = y - ay;
		const apz = z - az;
		const d1 = abx * apx + aby * apy + abz * apz;
		const d2 = acx * apx + acy * apy + acz * apz;
		if (d1 <= 0 && d2 <= 0) return this.#offer(place, CORNER, ax, ay, az, x, y, z);
		const bpx = apx - abx;
		const bpy = apy - aby;
		const bpz = apz - abz;
		const d3 = abx * bpx + aby * bpy + abz * bpz;
		const d4 = acx * bpx + acy * bpy + acz * bpz;
		if (d3 >= 0 && d4 <= d3)
			return this.#offer(place, CORNER + 1, ax + abx, ay + aby, az + abz, x, y, z);
		const vc = d1 * d4 - d3 * d2;
		if (vc <= 0 && d1 >= 0 && d3 <= 0) {
			const v = d1 / (d1 - d3);
			return this.#offer(place, SIDE, ax + v * abx, ay + v * aby, az + v * abz, x, y, z);
		}
		const cpx = apx - acx;
		const cpy = apy - acy;
		const cpz = apz - acz;
		const d5 = abx * cpx + aby * cpy + abz * cpz;
		const d6 = acx * cpx + acy * cpy + acz * cpz;
		if (d6 >= 0 && d5 <= d6)
			return this.#offer(place, CORNER + 2, ax + acx, ay + acy, az + acz, x, y, z);
		const vb = d5 * d2 - d1 * d6;
		if (vb <= 0 && d2 >= 0 && d6 <= 0) {
			const w = d2 / (d2 - d6);
			return this.#offer(place, SIDE + 2, ax + w * acx, ay + w * acy, az + w * acz, x, y, z);
		}
		const va = d3 * d6 - d5 * d4;
		if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
			const w = (d4 - d3) / (d4 - d3 + (d5 - d6));
			return this.#offer(
				place,
				SIDE + 1,
				ax + abx + w * (acx - abx),
				ay + aby + w * (acy - aby),
				az + abz + w * (acz - abz),
				x,
				y,
				z
			);
		}
		const total = va + vb + vc;
		const v = vb / total;
		const w = vc / total;
		this.#offer(
			place,
			FACE,
			ax + abx * v + acx * w,
			ay + aby * v + acy * w,
			az + abz * v + acz * w,
			x,
			y,
			z
		);
	}

	#offer(
		place: number,
		feature: number,
		px: number,
		py: number,
		pz: number,
		x: number,
		y: number,
		z: number
	): void {
		const squared = (x - px) * (x - px) + (y - py) * (y - py) + (z - pz) * (z - pz);
		if (!(squared < this.distanceSquared)) return;
		this.distanceSquared = squared;
		this.#place = place;
		this.feature = feature;
		this.x = px;
		this.y = py;
		this.z = pz;
	}
}

function boxDistance(boxes: Float64Array, at: number, x: number, y: number, z: number): number {
	const dx = Math.max(boxes[at]! - x, x - boxes[at + 3]!, 0);
	const dy = Math.max(boxes[at + 1]! - y, y - boxes[at + 4]!, 0);
	const dz = Math.max(boxes[at + 2]! - z, z - boxes[at + 5]!, 0);
	return dx * dx + dy * dy + dz * dz;
}
