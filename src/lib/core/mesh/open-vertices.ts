import type { RollingBall } from './ball-contact';
import type { CoatedVertices } from './coated-vertices';
import { upwardDirections } from './directions';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import type { SurfaceDistance } from './surface-distance';
import { UnionFind } from './union-find';
import { vertexLinks } from './vertex-links';

/** Ways by which a brush comes in. A choice. */
const WAYS = upwardDirections(48, 16);
/** Of one patch this many vertices are asked for a way out; patches of fewer vertices than the least are the mesh's noise. Choices. */
const MOST_ASKED = 40;
const LEAST_VERTICES = 3;
/** A ball that touches has no more room than this part of its radius less. */
const TOUCH = 0.9;

/**
 * The vertices that a ball touches which comes in from outside in a straight line to somewhere on their patch: 1 for each.
 * Where it fits behind a neck that it does not pass, it is not there.
 */
export function openVertices(
	mesh: Mesh,
	{ normals }: CoatedVertices,
	ball: RollingBall,
	surface: SurfaceDistance
): Uint8Array {
	const count = mesh.positions.length / 3;
	const fits = new Uint8Array(count);
	for (let v = 0; v < count; v += 1) {
		const normal = vertexAt({ positions: normals }, v);
		if (normal[0] === 0 && normal[1] === 0 && normal[2] === 0) continue;
		if (ball.fitsAt(...vertexAt(mesh, v), ...normal)) fits[v] = 1;
	}
	const patches = patchesOf(mesh, fits);
	const height = mesh.positions.reduce(
		(top, value, i) => (i % 3 === 2 ? Math.max(top, value) : top),
		0
	);
	for (const patch of patches) {
		const step = Math.ceil(patch.length / MOST_ASKED);
		const isOpen =
			patch.length < LEAST_VERTICES ||
			patch.some((v, i) => {
				if (i % step !== 0) return false;
				ball.fitsAt(...vertexAt(mesh, v), ...vertexAt({ positions: normals }, v));
				const from: Vec3 = [ball.x, ball.y, ball.z];
				return WAYS.some((way) => leaves(surface, from, way, ball.radius, height));
			});
		if (!isOpen) for (const v of patch) fits[v] = 0;
	}
	return fits;
}

/** Vertices that hang together, the largest patch first. */
function patchesOf(mesh: Mesh, fits: Uint8Array): number[][] {
	const joined = new UnionFind(fits.length);
	const { starts, links } = vertexLinks(mesh);
	for (let v = 0; v < fits.length; v += 1) {
		for (let k = starts[v]!; k < starts[v + 1]!; k += 1)
			if (fits[v] && fits[links[k]!]) joined.join(v, links[k]!);
	}
	const patches = new Map<number, number[]>();
	fits.forEach((fit, v) => {
		if (!fit) return;
		const root = joined.rootOf(v);
		const patch = patches.get(root);
		if (patch) patch.push(v);
		else patches.set(root, [v]);
	});
	return [...patches.values()];
}

/** Whether a ball moves from a point along a direction to where nothing is near, without sinking into a surface. */
function leaves(
	surface: SurfaceDistance,
	from: Vec3,
	way: Vec3,
	radius: number,
	height: number
): boolean {
	let gone = 0;
	for (let i = 0; i < 400; i += 1) {
		const [x, y, z] = [0, 1, 2].map((axis) => from[axis]! + gone * way[axis]!) as [
			number,
			number,
			number
		];
		const room = surface.at(x, y, z);
		if (room < TOUCH * radius) return false;
		if (z > height + radius || room > 20 * radius + height) return true;
		gone += Math.max(radius / 4, room - radius);
	}
	return false;
}
