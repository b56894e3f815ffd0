import { bvhOf, type Bvh } from './bvh';
import { vertexAt, type Vec3 } from './mesh';
import { cross, dot, lengthOf, subtract, unitOf } from './vector';

/** Finds those of some corners that lie on a side. */
export class CornersAlong {
	readonly #positions: Float64Array;
	readonly #corners: readonly number[];
	readonly #same: number;
	readonly #bvh: Bvh;

	/**
	 * @param corners - numbers of the corners that may lie on a side
	 * @param same - farthest that one may lie beside it
	 */
	constructor(positions: Float64Array, corners: readonly number[], same: number) {
		this.#positions = positions;
		this.#corners = corners;
		this.#same = same;
		// A tree of triangles that are points.
		this.#bvh = bvhOf({
			positions,
			triangles: Uint32Array.from(corners.flatMap((v) => [v, v, v]))
		});
	}

	/** The corners strictly between two, in order from the first. */
	between(from: number, to: number): number[] {
		const at = (v: number): Vec3 => vertexAt({ positions: this.#positions }, v);
		const [a, b] = [at(from), at(to)];
		const way = subtract(b, a);
		const along = unitOf(way);
		const found: { v: number; part: number }[] = [];
		for (const v of this.#inBox(a, b)) {
			const point = subtract(at(v), a);
			const part = dot(point, along);
			if (v === from || v === to || part <= 0 || part >= lengthOf(way)) continue;
			if (lengthOf(cross(along, point)) <= this.#same) found.push({ v, part });
		}
		return found.sort((x, y) => x.part - y.part).map(({ v }) => v);
	}

	*#inBox(a: Vec3, b: Vec3): Generator<number> {
		const { boxes, counts, links, starts, order } = this.#bvh;
		const low = a.map((value, axis) => Math.min(value, b[axis]!) - this.#same);
		const high = a.map((value, axis) => Math.max(value, b[axis]!) + this.#same);
		const stack = [0];
		for (let node = stack.pop(); node !== undefined; node = stack.pop()) {
			const at = 6 * node;
			const isApart = [0, 1, 2].some(
				(axis) => boxes[at + axis]! > high[axis]! || boxes[at + 3 + axis]! < low[axis]!
			);
			if (isApart) continue;
			if (counts[node] === 0) stack.push(node + 1, links[node]!);
			for (let i = starts[node]!; i < starts[node]! + counts[node]!; i += 1)
				yield this.#corners[order[i]!]!;
		}
	}
}
