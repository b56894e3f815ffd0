import { bvhOf, type Bvh } from './bvh';
import { ClosestPoint, CORNER, FACE, SIDE } from './closest-point';
import type { Mesh } from './mesh';
import { pseudoNormalsOf, type PseudoNormals } from './pseudo-normals';

/**
 * Distance from a closed mesh, positive outside. The foot of the perpendicular, its triangle and the
 * direction away from the surface stay in the fields until the next question.
 */
export class SurfaceDistance {
	readonly mesh: Mesh;
	readonly bvh: Bvh;
	readonly normals: PseudoNormals;
	readonly #closest: ClosestPoint;
	readonly #hasBoard: boolean;
	/** Foot of the perpendicular. */
	footX = 0;
	footY = 0;
	footZ = 0;
	/** Unit direction in which the distance grows. */
	dirX = 0;
	dirY = 0;
	dirZ = 1;
	/** Triangle of the foot; −1 when the board is nearer. */
	triangle = -1;

	/**
	 * @param hasBoard - whether the half-space below z = 0 counts as solid too
	 */
	constructor(
		mesh: Mesh,
		{ hasBoard = false, bvh = bvhOf(mesh), normals = pseudoNormalsOf(mesh) } = {}
	) {
		this.mesh = mesh;
		this.bvh = bvh;
		this.normals = normals;
		this.#closest = new ClosestPoint(bvh);
		this.#hasBoard = hasBoard;
	}

	/** The same surface with or without the board, sharing its tree. */
	withBoard(hasBoard: boolean): SurfaceDistance {
		return new SurfaceDistance(this.mesh, { hasBoard, bvh: this.bvh, normals: this.normals });
	}

	/** Signed distance of a point, in the mesh's unit. */
	at(x: number, y: number, z: number): number {
		const found = this.#closest;
		found.find(x, y, z);
		const dx = x - found.x;
		const dy = y - found.y;
		const dz = z - found.z;
		const normal = this.#normalAt(found.triangle, found.feature);
		const from = this.#normalIndex;
		const side = dx * normal[from]! + dy * normal[from + 1]! + dz * normal[from + 2]!;
		const length = Math.sqrt(found.distanceSquared);
		const distance = side < 0 ? -length : length;
		if (this.#hasBoard && distance > 0 && z < distance) return this.#overBoard(x, y, z);
		this.triangle = found.triangle;
		this.footX = found.x;
		this.footY = found.y;
		this.footZ = found.z;
		if (length > 1e-9) {
			this.dirX = dx / distance;
			this.dirY = dy / distance;
			this.dirZ = dz / distance;
		} else {
			const size = Math.hypot(normal[from]!, normal[from + 1]!, normal[from + 2]!) || 1;
			this.dirX = normal[from]! / size;
			this.dirY = normal[from + 1]! / size;
			this.dirZ = normal[from + 2]! / size;
		}
		return distance;
	}

	/** Whether the mesh itself comes within `reach` of a point: quick to deny, however many triangles are as far away as each other. */
	comesWithin(reach: number, x: number, y: number, z: number): boolean {
		return this.#closest.find(x, y, z, reach);
	}

	#overBoard(x: number, y: number, z: number): number {
		this.triangle = -1;
		this.footX = x;
		this.footY = y;
		this.footZ = 0;
		this.dirX = 0;
		this.dirY = 0;
		this.dirZ = 1;
		return z;
	}

	#normalIndex = 0;

	#normalAt(triangle: number, feature: number): Float64Array {
		if (feature === FACE) {
			this.#normalIndex = 3 * triangle;
			return this.normals.face;
		}
		if (feature < CORNER) {
			this.#normalIndex = 3 * (3 * triangle + feature - SIDE);
			return this.normals.edge;
		}
		this.#normalIndex = 3 * this.mesh.triangles[3 * triangle + feature - CORNER]!;
		return this.normals.vertex;
	}
}
