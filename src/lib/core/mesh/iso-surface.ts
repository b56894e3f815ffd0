import type { Bounds } from './measures';
import type { Mesh } from './mesh';
import { floats, indexes } from './number-list';

/** Six tetrahedra around a cube's long diagonal; corners are numbered by bits x, y, z. */
const TETRAHEDRA = [
	[0, 1, 3, 7],
	[0, 3, 2, 7],
	[0, 2, 6, 7],
	[0, 6, 4, 7],
	[0, 4, 5, 7],
	[0, 5, 1, 7]
] as const;
/** Values nearer to zero than this part of a cell are moved off it, so that no triangle shrinks to a point. */
const OFF = 1e-3;

/**
 * The surface where `value` is zero, as a closed mesh around where it is negative. The function must be
 * positive on the box's sides.
 *
 * Source: Doi, Koide 1991, An efficient method of triangulating equi-valued surfaces by using tetrahedral
 * cells, IEICE Trans. E74 (from memory).
 *
 * @param side - of the cells, in the unit of the bounds
 */
export function isoSurface(
	value: (x: number, y: number, z: number) => number,
	{ min, max }: Bounds,
	side: number
): Mesh {
	const [nx, ny, nz] = [0, 1, 2].map((axis) => Math.ceil((max[axis]! - min[axis]!) / side) + 1) as [
		number,
		number,
		number
	];
	const values = new Float64Array(nx * ny * nz);
	for (let k = 0, n = 0; k < nz; k += 1) {
		for (let j = 0; j < ny; j += 1) {
			for (let i = 0; i < nx; i += 1, n += 1) {
				const found = value(min[0] + i * side, min[1] + j * side, min[2] + k * side);
				values[n] = Math.abs(found) < OFF * side ? OFF * side : found;
			}
		}
	}
	const nodeAt = (n: number): [number, number, number] => [
		min[0] + (n % nx) * side,
		min[1] + (Math.floor(n / nx) % ny) * side,
		min[2] + Math.floor(n / (nx * ny)) * side
	];
	const builder = new Builder(values, nodeAt);
	const corner = Uint32Array.from(
		{ length: 8 },
		(_, c) => (c & 1) + ((c >> 1) & 1) * nx + (c >> 2) * nx * ny
	);
	for (let k = 0; k + 1 < nz; k += 1) {
		for (let j = 0; j + 1 < ny; j += 1) {
			for (let i = 0; i + 1 < nx; i += 1) {
				const n = i + nx * (j + ny * k);
				let inside = 0;
				for (const offset of corner) inside += values[n + offset]! < 0 ? 1 : 0;
				if (inside === 0 || inside === 8) continue;
				for (const [a, b, c, d] of TETRAHEDRA) {
					builder.addTetrahedron(n + corner[a]!, n + corner[b]!, n + corner[c]!, n + corner[d]!);
				}
			}
		}
	}
	return builder.mesh();
}

class Builder {
	readonly #values: Float64Array;
	readonly #nodeAt: (n: number) => [number, number, number];
	readonly #positions = floats();
	readonly #triangles = indexes();
	/** The vertex on the edge between two nodes. */
	readonly #vertices = new Map<number, number>();

	constructor(values: Float64Array, nodeAt: (n: number) => [number, number, number]) {
		this.#values = values;
		this.#nodeAt = nodeAt;
	}

	mesh(): Mesh {
		return { positions: this.#positions.toArray(), triangles: this.#triangles.toArray() };
	}

	addTetrahedron(a: number, b: number, c: number, d: number): void {
		const all = [a, b, c, d];
		const inside = all.filter((n) => this.#values[n]! < 0);
		const outside = all.filter((n) => this.#values[n]! >= 0);
		if (inside.length === 0 || outside.length === 0) return;
		const [i, j] = inside;
		const [o, p] = outside;
		if (inside.length === 1)
			this.#triangle(
				outside.map((n) => this.#between(i!, n)),
				i!,
				o!
			);
		else if (outside.length === 1)
			this.#triangle(
				inside.map((n) => this.#between(n, o!)),
				i!,
				o!
			);
		else {
			const [ip, io, jo, jp] = [
				this.#between(i!, p!),
				this.#between(i!, o!),
				this.#between(j!, o!),
				this.#between(j!, p!)
			];
			this.#triangle([ip, io, jo], i!, o!);
			this.#triangle([ip, jo, jp], i!, o!);
		}
	}

	/** Adds the triangle so that it faces from the inner node to the outer one. */
	#triangle(corners: number[], inner: number, outer: number): void {
		const [a, b, c] = corners as [number, number, number];
		const [p, q, r] = [this.#vertex(a), this.#vertex(b), this.#vertex(c)];
		const [u, v] = [q.map((value, k) => value - p[k]!), r.map((value, k) => value - p[k]!)];
		const [from, to] = [this.#nodeAt(inner), this.#nodeAt(outer)];
		const facing =
			(u[1]! * v[2]! - u[2]! * v[1]!) * (to[0] - from[0]) +
			(u[2]! * v[0]! - u[0]! * v[2]!) * (to[1] - from[1]) +
			(u[0]! * v[1]! - u[1]! * v[0]!) * (to[2] - from[2]);
		if (facing >= 0) this.#triangles.push3(a, b, c);
		else this.#triangles.push3(a, c, b);
	}

	#vertex(index: number): number[] {
		return this.#placed[index]!;
	}

	readonly #placed: number[][] = [];

	#between(inner: number, outer: number): number {
		const key = Math.min(inner, outer) * this.#values.length + Math.max(inner, outer);
		const known = this.#vertices.get(key);
		if (known !== undefined) return known;
		const [low, high] = [this.#values[inner]!, this.#values[outer]!];
		const part = low / (low - high);
		const [from, to] = [this.#nodeAt(inner), this.#nodeAt(outer)];
		const point = from.map((value, k) => value + (to[k]! - value) * part) as [
			number,
			number,
			number
		];
		this.#positions.push3(...point);
		this.#placed.push(point);
		this.#vertices.set(key, this.#placed.length - 1);
		return this.#placed.length - 1;
	}
}
