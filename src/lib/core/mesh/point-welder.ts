import type { Vec3 } from './mesh';

/** Side of a cell in widths of what counts as one: most points then lie in one cell alone. Measured. */
const CELL = 64;

/** Remembers points by number; those nearer together than `same` have one. */
export class PointWelder {
	readonly #same: number;
	readonly #cells = new Map<number, { id: number; point: Vec3 }[]>();

	constructor(same: number) {
		this.#same = same;
	}

	/** The number of the point known there, or else the given one, which is remembered. */
	idOf(point: Vec3, id: number): number {
		const side = CELL * this.#same;
		const [low, high] = [-1, 1].map((way) =>
			point.map((value) => Math.floor((value + way * this.#same) / side))
		) as [number[], number[]];
		for (let i = low[0]!; i <= high[0]!; i += 1) {
			for (let j = low[1]!; j <= high[1]!; j += 1) {
				for (let k = low[2]!; k <= high[2]!; k += 1) {
					const found = this.#cells
						.get(hashOf(i, j, k))
						?.find((known) => this.#isSame(known.point, point));
					if (found) return found.id;
				}
			}
		}
		const [i, j, k] = point.map((value) => Math.floor(value / side)) as [number, number, number];
		const cell = this.#cells.get(hashOf(i, j, k));
		if (cell) cell.push({ id, point });
		else this.#cells.set(hashOf(i, j, k), [{ id, point }]);
		return id;
	}

	#isSame(a: Vec3, b: Vec3): boolean {
		return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) <= this.#same;
	}
}

/** Cells that share a number share a list: slower, no less right. */
function hashOf(i: number, j: number, k: number): number {
	return Math.imul(i, 73856093) ^ Math.imul(j, 19349663) ^ Math.imul(k, 83492791);
}
