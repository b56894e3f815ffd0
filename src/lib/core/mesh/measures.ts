import type { Mesh, Vec3 } from './mesh';

export interface Bounds {
	min: Vec3;
	max: Vec3;
}

/** What one pass over the triangles tells, in the mesh's own unit, its square and its cube. */
export interface Measures {
	area: number;
	/** Positive when the triangles face outward; exact for a closed mesh only. */
	signedVolume: number;
	/** Center of mass of a homogeneous solid; the mean of the corners when the volume is none. */
	center: Vec3;
	bounds: Bounds;
}

/**
 * Area, volume, center of mass and box of a mesh, by the divergence theorem over its triangles.
 *
 * Tetrahedra are taken from a vertex of the mesh, so that a pattern far from the origin loses no digits.
 * Source: Zhang, Chen 2001, Efficient feature extraction for 2D/3D objects in mesh representation (from memory).
 */
export function measuresOf({ positions, triangles }: Mesh): Measures {
	const sums = new MeasureSums(positions[0] ?? 0, positions[1] ?? 0, positions[2] ?? 0);
	for (let t = 0; t < triangles.length; t += 3) {
		const a = 3 * triangles[t]!;
		const b = 3 * triangles[t + 1]!;
		const c = 3 * triangles[t + 2]!;
		sums.add(
			positions[a]!,
			positions[a + 1]!,
			positions[a + 2]!,
			positions[b]!,
			positions[b + 1]!,
			positions[b + 2]!,
			positions[c]!,
			positions[c + 1]!,
			positions[c + 2]!
		);
	}
	return sums.measures();
}

/** Running sums over triangles, about an origin near them. */
export class MeasureSums {
	readonly #x0: number;
	readonly #y0: number;
	readonly #z0: number;
	#area = 0;
	#volume6 = 0;
	#momentX = 0;
	#momentY = 0;
	#momentZ = 0;
	#cornerX = 0;
	#cornerY = 0;
	#cornerZ = 0;
	#count = 0;
	#minX = Infinity;
	#minY = Infinity;
	#minZ = Infinity;
	#maxX = -Infinity;
	#maxY = -Infinity;
	#maxZ = -Infinity;

	constructor(x0: number, y0: number, z0: number) {
		this.#x0 = x0;
		this.#y0 = y0;
		this.#z0 = z0;
	}

	/** Takes in one triangle; plain numbers, because a million objects would cost more than the sums. */
	add(
		ax: number,
		ay: number,
		az: number,
		bx: number,
		by: number,
		bz: number,
		cx: number,
		cy: number,
		cz: number
	): void {
		this.#minX = Math.min(this.#minX, ax, bx, cx);
		this.#minY = Math.min(this.#minY, ay, by, cy);
		this.#minZ = Math.min(this.#minZ, az, bz, cz);
		this.#maxX = Math.max(this.#maxX, ax, bx, cx);
		this.#maxY = Math.max(this.#maxY, ay, by, cy);
		this.#maxZ = Math.max(this.#maxZ, az, bz, cz);
		const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
		const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
		const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
		this.#area += Math.sqrt(nx * nx + ny * ny + nz * nz);
		const volume6 = (ax - this.#x0) * nx + (ay - this.#y0) * ny + (az - this.#z0) * nz;
		this.#volume6 += volume6;
		const sumX = ax + bx + cx - 3 * this.#x0;
		const sumY = ay + by + cy - 3 * this.#y0;
		const sumZ = az + bz + cz - 3 * this.#z0;
		this.#momentX += volume6 * sumX;
		this.#momentY += volume6 * sumY;
		this.#momentZ += volume6 * sumZ;
		this.#cornerX += sumX;
		this.#cornerY += sumY;
		this.#cornerZ += sumZ;
		this.#count += 3;
	}

	measures(): Measures {
		const size = Math.max(
			this.#maxX - this.#minX,
			this.#maxY - this.#minY,
			this.#maxZ - this.#minZ
		);
		const isSolid = Math.abs(this.#volume6) > 1e-9 * size ** 3;
		const by = 1 / (isSolid ? 4 * this.#volume6 : this.#count);
		return {
			area: this.#area / 2,
			signedVolume: this.#volume6 / 6,
			center: isSolid
				? [
						this.#x0 + this.#momentX * by,
						this.#y0 + this.#momentY * by,
						this.#z0 + this.#momentZ * by
					]
				: [
						this.#x0 + this.#cornerX * by,
						this.#y0 + this.#cornerY * by,
						this.#z0 + this.#cornerZ * by
					],
			bounds: {
				min: [this.#minX, this.#minY, this.#minZ],
				max: [this.#maxX, this.#maxY, this.#maxZ]
			}
		};
	}
}
