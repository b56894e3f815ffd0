import type { Bridging } from '../core/mesh/bridging';
import type { Health } from '../core/mesh/health';
import { coarserMesh, simplifiedCopy } from '../core/mesh/coarser';
import type { Mesh } from '../core/mesh/mesh';
import type { ShellOpening } from '../core/mesh/opening';
import { lyingTriangles } from '../core/mesh/standing';
import { areaNormals } from '../core/mesh/triangle-normals';
import type { MeshModel, ModelLayer } from './mesh-messages';

/** More than this makes a device without a graphics card stand still for seconds. A choice. */
const MOST_DRAWN = 150_000;
/** A copy that lost more of the volume than this is no picture of the pattern. A choice. */
const MOST_LOST = 0.05;

/** What is known of the pattern on the board. */
export interface LayerSources {
	mesh: Mesh;
	bridging: Bridging | null;
	opening: ShellOpening | null;
	health: Health | null;
	/** Greatest slope on which a build coat stays; null while nobody has said which coat. */
	holdsToDeg: number | null;
}

/** The pattern with what one layer says of it, ready to be drawn; a copy where it is very fine. */
export function modelOf(layer: ModelLayer, sources: LayerSources): MeshModel {
	return lighter(wholeModel(layer, sources));
}

/** A copy of fewer triangles, each of its corners with the greatest value of those that became one in it. */
function lighter(model: MeshModel): MeshModel {
	const { layer, triangles, values } = model;
	const whole = { positions: Float64Array.from(model.positions), triangles };
	const copy = coarserMesh(whole, MOST_DRAWN, true);
	const { mesh, cornerOf } = copy;
	const lost = simplifiedCopy(whole, copy)?.volumeOffFraction ?? 0;
	if (!cornerOf || !(Math.abs(lost) <= MOST_LOST)) return model;
	const most = values && new Float32Array(mesh.positions.length / 3);
	if (values && most) {
		cornerOf.forEach((corner, v) => (most[corner] = Math.max(most[corner]!, values[v]!)));
	}
	return {
		layer,
		positions: Float32Array.from(mesh.positions),
		triangles: mesh.triangles.slice(),
		values: most
	};
}

function wholeModel(layer: ModelLayer, sources: LayerSources): MeshModel {
	const { mesh, bridging, opening, health, holdsToDeg } = sources;
	if (layer === 'air' && bridging) {
		return {
			layer,
			positions: Float32Array.from(bridging.mesh.positions),
			triangles: bridging.mesh.triangles.slice(),
			values: Float32Array.from(bridging.depthsMm)
		};
	}
	if (layer === 'locked' && opening) {
		return marked(layer, opening.mesh, (t) => opening.lockedTriangles[t] === 1);
	}
	if (layer === 'faults' && health) {
		const faulty = new Set(health.faults.flatMap(({ triangles }) => triangles));
		return marked(layer, mesh, (t) => faulty.has(t));
	}
	if (layer === 'runs' && holdsToDeg !== null) return marked(layer, mesh, runsAt(mesh, holdsToDeg));
	const positions = Float32Array.from(mesh.positions);
	return { layer, positions, triangles: mesh.triangles.slice(), values: null };
}

function runsAt(mesh: Mesh, holdsToDeg: number): (t: number) => boolean {
	const normals = areaNormals(mesh);
	const lying = lyingTriangles(mesh);
	return (t) => {
		const [x, y, z] = [normals[3 * t]!, normals[3 * t + 1]!, normals[3 * t + 2]!];
		// Past upright a coat hangs: it holds there no better than on a wall.
		const slopeDeg = Math.min(90, (Math.atan2(Math.hypot(x, y), z) * 180) / Math.PI);
		return !lying[t] && slopeDeg > holdsToDeg;
	};
}

/** Each triangle with corners of its own, so that a mark ends at its edge. */
function marked(layer: ModelLayer, mesh: Mesh, isMarked: (t: number) => boolean): MeshModel {
	const count = mesh.triangles.length;
	const positions = new Float32Array(3 * count);
	const values = new Float32Array(count);
	for (let k = 0; k < count; k += 1) {
		const at = 3 * mesh.triangles[k]!;
		positions.set(mesh.positions.subarray(at, at + 3), 3 * k);
	}
	for (let t = 0; t < count / 3; t += 1) if (isMarked(t)) values.fill(1, 3 * t, 3 * t + 3);
	return { layer, positions, triangles: Uint32Array.from({ length: count }, (_, k) => k), values };
}
