import type { Flat } from './flat-pieces';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { acrossTo, cross, dot, subtract, unitOf } from './vector';

/** A triangle's own plane, with its first corner as origin. */
export class TriangleFrame {
	readonly corners: readonly [Vec3, Vec3, Vec3];
	/** Outward, of length one. */
	readonly normal: Vec3;
	readonly #right: Vec3;
	readonly #up: Vec3;

	constructor(mesh: Mesh, triangle: number) {
		this.corners = [0, 1, 2].map((k) =>
			vertexAt(mesh, mesh.triangles[3 * triangle + k]!)
		) as unknown as [Vec3, Vec3, Vec3];
		const [a, b, c] = this.corners;
		this.normal = unitOf(cross(subtract(b, a), subtract(c, a)));
		[this.#right, this.#up] = acrossTo(this.normal);
	}

	/** How far above the plane a point lies. */
	heightOf(point: Vec3): number {
		return dot(this.normal, subtract(point, this.corners[0]));
	}

	flatOf(point: Vec3): Flat {
		const from = subtract(point, this.corners[0]);
		return [dot(this.#right, from), dot(this.#up, from)];
	}

	/** A point of the plane, raised above it. */
	at([x, y]: Flat, height = 0): Vec3 {
		const [origin] = this.corners;
		return [0, 1, 2].map(
			(k) => origin[k]! + this.#right[k]! * x + this.#up[k]! * y + this.normal[k]! * height
		) as unknown as Vec3;
	}

	get flatCorners(): Flat[] {
		return this.corners.map((corner) => this.flatOf(corner));
	}
}
