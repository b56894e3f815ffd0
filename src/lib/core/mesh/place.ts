import { measuresOf } from './measures';
import type { Mesh, Vec3 } from './mesh';
import { acrossTo, cross, scaled, unitOf } from './vector';

export interface Placement {
	/** Millimeters in the file's unit. */
	unitMm: number;
	/** Outward normal of the face that lies on the board, in the file's axes. */
	down: Vec3;
	/** Turn about the upright axis, counterclockwise seen from above. */
	turnDeg: number;
	/** Enlargement against shrinkage, 1 for none: a casting that shrinks by s needs 1 / (1 − s). */
	scale: number;
}

/**
 * The mesh in millimeters as it lies on the board: lowest point at z = 0, its box centered on the z axis.
 *
 * @throws RangeError when the unit or scale is not positive, or `down` has no direction
 */
export function placedMesh(mesh: Mesh, { unitMm, down, turnDeg, scale }: Placement): Mesh {
	const factor = unitMm * scale;
	if (!(factor > 0 && factor < Infinity)) {
		throw new RangeError(`unitMm × scale is ${factor}; accepted: above 0, finite`);
	}
	const up = scaled(unitOf(down), -1);
	if (!(Math.hypot(...up) > 0.5))
		throw new RangeError(`down is ${down.join(', ')}; accepted: a direction`);
	const turn = (turnDeg * Math.PI) / 180;
	const [u] = uprightAxes(up);
	const v = cross(up, u);
	const x = u.map((value, k) => factor * (Math.cos(turn) * value - Math.sin(turn) * v[k]!));
	const y = u.map((value, k) => factor * (Math.sin(turn) * value + Math.cos(turn) * v[k]!));
	const z = up.map((value) => factor * value);
	const positions = turned(mesh.positions, x, y, z);
	const { min, max } = measuresOf({ positions, triangles: mesh.triangles }).bounds;
	const [cx, cy] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
	for (let i = 0; i < positions.length; i += 3) {
		positions[i]! -= cx;
		positions[i + 1]! -= cy;
		positions[i + 2]! -= min[2];
	}
	return { positions, triangles: mesh.triangles };
}

/** The sides of a mesh lying on a face, in its own unit: x to the right and y to the back, not turned. */
export function lyingSides(mesh: Mesh, down: Vec3): { x: number; y: number; height: number } {
	const up = scaled(unitOf(down), -1);
	const [u, v] = uprightAxes(up);
	const [x, y, height] = [u, v, up].map(([a, b, c]) => {
		let [low, high] = [Infinity, -Infinity];
		for (let i = 0; i < mesh.positions.length; i += 3) {
			const at = a * mesh.positions[i]! + b * mesh.positions[i + 1]! + c * mesh.positions[i + 2]!;
			low = Math.min(low, at);
			high = Math.max(high, at);
		}
		return high - low;
	}) as [number, number, number];
	return { x, y, height };
}

/** Keeps the file's own x and y when z is already up, so that a well-laid file is not turned. */
function uprightAxes(up: Vec3): [Vec3, Vec3] {
	return up[2] > 1 - 1e-12
		? [
				[1, 0, 0],
				[0, 1, 0]
			]
		: acrossTo(up);
}

function turned(from: Float64Array, x: number[], y: number[], z: number[]): Float64Array {
	const to = new Float64Array(from.length);
	for (let i = 0; i < from.length; i += 3) {
		const [a, b, c] = [from[i]!, from[i + 1]!, from[i + 2]!];
		to[i] = x[0]! * a + x[1]! * b + x[2]! * c;
		to[i + 1] = y[0]! * a + y[1]! * b + y[2]! * c;
		to[i + 2] = z[0]! * a + z[1]! * b + z[2]! * c;
	}
	return to;
}
