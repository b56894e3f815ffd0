import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { cross, dot, lengthOf, subtract } from './vector';

interface Facet {
	a: number;
	b: number;
	c: number;
	nx: number;
	ny: number;
	nz: number;
	offset: number;
	/** Points outside this facet that no other facet has claimed. */
	outside: number[];
	isGone: boolean;
}

/**
 * The convex hull of a mesh's vertices: triangles that face outward and close, over the same vertices;
 * null when the points lie in a plane.
 *
 * Source: Barber, Dobkin, Huhdanpaa 1996, The Quickhull algorithm, ACM TOMS 22(4) (from memory). Points
 * nearer to a facet than 1e-9 of the size count as on it.
 */
export function convexHull({ positions }: Pick<Mesh, 'positions'>): Mesh | null {
	const start = firstTetrahedron(positions);
	if (!start) return null;
	const facets = new Hull(positions, start.size * 1e-9).around(start.corners);
	return { positions, triangles: Uint32Array.from(facets.flatMap(({ a, b, c }) => [a, b, c])) };
}

class Hull {
	readonly #points: Float64Array;
	readonly #tolerance: number;
	/** The facet to the left of each directed edge. */
	readonly #left = new Map<number, Facet>();
	readonly #count: number;

	constructor(points: Float64Array, tolerance: number) {
		this.#points = points;
		this.#tolerance = tolerance;
		this.#count = points.length / 3;
	}

	around([a, b, c, d]: readonly [number, number, number, number]): Facet[] {
		const facets = [
			this.#facet(a, b, c),
			this.#facet(a, d, b),
			this.#facet(b, d, c),
			this.#facet(c, d, a)
		];
		const all = Array.from({ length: this.#count }, (_, i) => i);
		this.#claim(all, facets);
		const queue = [...facets];
		for (let facet = queue.pop(); facet; facet = queue.pop()) {
			if (facet.isGone || facet.outside.length === 0) continue;
			const added = this.#grow(facet);
			facets.push(...added);
			queue.push(...added);
		}
		return facets.filter(({ isGone }) => !isGone);
	}

	/** Replaces all facets that the farthest point outside `facet` can see by a cone to that point. */
	#grow(facet: Facet): Facet[] {
		let eye = facet.outside[0]!;
		for (const point of facet.outside) {
			if (this.#height(facet, point) > this.#height(facet, eye)) eye = point;
		}
		const seen = [facet];
		const rim: [number, number][] = [];
		facet.isGone = true;
		for (let i = 0; i < seen.length; i += 1) {
			const { a, b, c } = seen[i]!;
			for (const [from, to] of [
				[a, b],
				[b, c],
				[c, a]
			] as [number, number][]) {
				const other = this.#left.get(this.#edge(to, from))!;
				if (other.isGone) continue;
				if (this.#height(other, eye) > this.#tolerance) {
					other.isGone = true;
					seen.push(other);
				} else rim.push([from, to]);
			}
		}
		const orphans = seen.flatMap(({ outside }) => outside).filter((point) => point !== eye);
		for (const gone of seen) gone.outside = [];
		const added = rim.map(([from, to]) => this.#facet(from, to, eye));
		this.#claim(orphans, added);
		return added;
	}

	#claim(points: readonly number[], facets: readonly Facet[]): void {
		for (const point of points) {
			let best: Facet | null = null;
			let highest = this.#tolerance;
			for (const facet of facets) {
				const height = this.#height(facet, point);
				if (height > highest) {
					highest = height;
					best = facet;
				}
			}
			best?.outside.push(point);
		}
	}

	#facet(a: number, b: number, c: number): Facet {
		const p = this.#points;
		const [ux, uy, uz] = [
			p[3 * b]! - p[3 * a]!,
			p[3 * b + 1]! - p[3 * a + 1]!,
			p[3 * b + 2]! - p[3 * a + 2]!
		];
		const [vx, vy, vz] = [
			p[3 * c]! - p[3 * a]!,
			p[3 * c + 1]! - p[3 * a + 1]!,
			p[3 * c + 2]! - p[3 * a + 2]!
		];
		const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
		const length = Math.hypot(x, y, z) || 1;
		const [nx, ny, nz] = [x / length, y / length, z / length];
		const offset = nx * p[3 * a]! + ny * p[3 * a + 1]! + nz * p[3 * a + 2]!;
		const facet: Facet = { a, b, c, nx, ny, nz, offset, outside: [], isGone: false };
		this.#left.set(this.#edge(a, b), facet);
		this.#left.set(this.#edge(b, c), facet);
		this.#left.set(this.#edge(c, a), facet);
		return facet;
	}

	#edge(from: number, to: number): number {
		return from * this.#count + to;
	}

	#height({ nx, ny, nz, offset }: Facet, point: number): number {
		const p = this.#points;
		return nx * p[3 * point]! + ny * p[3 * point + 1]! + nz * p[3 * point + 2]! - offset;
	}
}

interface Start {
	corners: readonly [number, number, number, number];
	size: number;
}

/** Four points far from a common plane, facing outward; null when there are none. */
function firstTetrahedron(points: Float64Array): Start | null {
	const count = points.length / 3;
	const farthest = (measure: (i: number) => number): number => {
		let best = 0;
		for (let i = 1; i < count; i += 1) if (measure(i) > measure(best)) best = i;
		return best;
	};
	const at = (i: number): Vec3 => vertexAt({ positions: points }, i);
	const a = farthest((i) => -points[3 * i]!);
	const from = (i: number): Vec3 => subtract(at(i), at(a));
	const b = farthest((i) => lengthOf(from(i)));
	const size = lengthOf(from(b));
	const c = farthest((i) => lengthOf(cross(from(b), from(i))));
	const normal = cross(from(b), from(c));
	const above = (i: number): number => dot(from(i), normal);
	const d = farthest((i) => Math.abs(above(i)));
	if (!(Math.abs(above(d)) > 1e-9 * size ** 3)) return null;
	return { corners: above(d) > 0 ? [a, c, b, d] : [a, b, c, d], size };
}
