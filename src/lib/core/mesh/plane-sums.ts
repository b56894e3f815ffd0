import type { Mesh } from './mesh';
import { areaNormals } from './triangle-normals';

/** How far the mean of the corners draws, beside the planes: a flat face alone leaves the point free along it. */
const DRAW = 1e-3;

/**
 * For groups of corners of a mesh the point whose squared distances from the planes around, weighted by
 * their areas, are least.
 *
 * Source: Garland, Heckbert 1997, Surface simplification using quadric error metrics, SIGGRAPH (from memory).
 */
export class PlaneSums {
	/** Means of the corners, and how many. */
	readonly #means: Float64Array;
	readonly #counts: Uint32Array;
	/** For each group the upper half of a matrix and the right side, about its mean: nine numbers. */
	readonly #sums: Float64Array;

	constructor({ positions, triangles }: Mesh, groupOf: Uint32Array, count: number) {
		this.#means = new Float64Array(3 * count);
		this.#counts = new Uint32Array(count);
		this.#sums = new Float64Array(9 * count);
		for (let v = 0; v < groupOf.length; v += 1) {
			const g = groupOf[v]!;
			this.#counts[g]! += 1;
			for (let axis = 0; axis < 3; axis += 1)
				this.#means[3 * g + axis]! += positions[3 * v + axis]!;
		}
		for (let i = 0; i < this.#means.length; i += 1) {
			this.#means[i]! /= this.#counts[Math.floor(i / 3)]!;
		}
		const normals = areaNormals({ positions, triangles });
		for (let k = 0; k < triangles.length; k += 1) {
			this.#add(groupOf[triangles[k]!]!, normals, k - (k % 3), positions, 3 * triangles[k]!);
		}
	}

	/** The points, none farther than `most` along an axis from the mean of its group's corners. */
	meetings(most: number): Float64Array<ArrayBuffer> {
		const points = new Float64Array(this.#means.length);
		for (let g = 0; g < this.#counts.length; g += 1) {
			const [x, y, z] = this.#solved(g);
			const isNear = Math.max(Math.abs(x), Math.abs(y), Math.abs(z)) <= most;
			points[3 * g] = this.#means[3 * g]! + (isNear ? x : 0);
			points[3 * g + 1] = this.#means[3 * g + 1]! + (isNear ? y : 0);
			points[3 * g + 2] = this.#means[3 * g + 2]! + (isNear ? z : 0);
		}
		return points;
	}

	#add(g: number, normals: Float64Array, n: number, positions: Float64Array, p: number): void {
		const [x, y, z] = [normals[n]!, normals[n + 1]!, normals[n + 2]!];
		const length = Math.sqrt(x * x + y * y + z * z);
		if (length === 0) return;
		const height =
			x * (positions[p]! - this.#means[3 * g]!) +
			y * (positions[p + 1]! - this.#means[3 * g + 1]!) +
			z * (positions[p + 2]! - this.#means[3 * g + 2]!);
		const sums = this.#sums;
		const at = 9 * g;
		sums[at]! += (x * x) / length;
		sums[at + 1]! += (x * y) / length;
		sums[at + 2]! += (x * z) / length;
		sums[at + 3]! += (y * y) / length;
		sums[at + 4]! += (y * z) / length;
		sums[at + 5]! += (z * z) / length;
		sums[at + 6]! += (x * height) / length;
		sums[at + 7]! += (y * height) / length;
		sums[at + 8]! += (z * height) / length;
	}

	/** Cramer's rule on the matrix with a little of its trace added along the diagonal. */
	#solved(g: number): [number, number, number] {
		const [xx, xy, xz, yy, yz, zz, bx, by, bz] = this.#sums.subarray(9 * g, 9 * g + 9);
		const draw = DRAW * (xx! + yy! + zz!);
		const [a, d, f] = [xx! + draw, yy! + draw, zz! + draw];
		const [b, c, e] = [xy!, xz!, yz!];
		const [p, q, r] = [d * f - e * e, c * e - b * f, b * e - c * d];
		const determinant = a * p + b * q + c * r;
		if (!(Math.abs(determinant) > 0)) return [0, 0, 0];
		const [s, t, u] = [a * f - c * c, b * c - a * e, a * d - b * b];
		return [
			(p * bx! + q * by! + r * bz!) / determinant,
			(q * bx! + s * by! + t * bz!) / determinant,
			(r * bx! + t * by! + u * bz!) / determinant
		];
	}
}
