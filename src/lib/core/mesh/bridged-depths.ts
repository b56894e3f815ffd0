import { CAREFUL, QUICK, RollingBall } from './ball-contact';
import type { CoatedVertices } from './coated-vertices';
import { vertexAt, type Mesh } from './mesh';
import type { SurfaceDistance } from './surface-distance';
import { subtract, unitOf } from './vector';
import { vertexLinks } from './vertex-links';

export interface BridgedDepths {
	/** Gap between surface and the underside of the coat at each vertex, mm; 0 where the coat wets. */
	depthsMm: Float64Array;
	/** Center of the ball that comes nearest to each vertex. */
	centers: Float64Array;
}

/** A vertex is rolled to again when a neighbor's center is nearer by this factor … */
const GAIN = 0.98;
/** … this often at most. */
const MOST_VISITS = 20;
/** Gap kept of a vertex that was rolled to and is touched, so that it differs from one where the ball fits by itself, mm. */
const TOUCHING = 1e-9;

/**
 * How far from each vertex a coat stays that reaches `reachMm` around corners: the morphological closing
 * of the pattern by a ball, seen from the surface. Balls are rolled inward from where they touch.
 *
 * @param isOpen - for each vertex 1 where a ball may start from; all where it fits when left out
 */
export function bridgedDepths(
	mesh: Mesh,
	{ normals }: CoatedVertices,
	surface: SurfaceDistance,
	reachMm: number,
	isOpen: Uint8Array | null = null
): BridgedDepths {
	const { positions } = mesh;
	const count = positions.length / 3;
	const ball = new RollingBall(surface, reachMm);
	const depthsMm = new Float64Array(count).fill(Infinity);
	const centers = new Float64Array(3 * count);
	const visits = new Uint8Array(count);
	const keep = (v: number, depth: number): void => {
		depthsMm[v] = depth;
		centers[3 * v] = ball.x;
		centers[3 * v + 1] = ball.y;
		centers[3 * v + 2] = ball.z;
	};
	const normalAt = (v: number) => vertexAt({ positions: normals }, v);
	const centerAt = (v: number) => vertexAt({ positions: centers }, v);
	/** From a vertex that the ball touches toward the ball's center. */
	const leanAt = (v: number) => unitOf(subtract(centerAt(v), vertexAt(mesh, v)));
	const queue: number[] = [];
	for (let v = 0; v < count; v += 1) {
		const i = 3 * v;
		const isMet = normals[i] !== 0 || normals[i + 1] !== 0 || normals[i + 2] !== 0;
		if (!isMet) depthsMm[v] = 0;
		else if (
			(isOpen?.[v] ?? 1) === 1 &&
			ball.fitsAt(
				positions[i]!,
				positions[i + 1]!,
				positions[i + 2]!,
				normals[i]!,
				normals[i + 1]!,
				normals[i + 2]!
			)
		) {
			keep(v, 0);
			queue.push(v);
		}
	}
	const { starts, links } = vertexLinks(mesh);
	for (let head = 0; head < queue.length; head += 1) {
		const u = queue[head]!;
		for (let k = starts[u]!; k < starts[u + 1]!; k += 1) {
			const v = links[k]!;
			if (depthsMm[v] === 0 || visits[v]! >= MOST_VISITS) continue;
			const point = vertexAt(mesh, v);
			// Over a lip the ball must first be tipped: rolled, it would come to rest on the near side.
			if (depthsMm[u]! <= TOUCHING) ball.tipAt(vertexAt(mesh, u), leanAt(u), normalAt(v));
			else [ball.x, ball.y, ball.z] = centerAt(u);
			if (ball.gapTo(point) > depthsMm[v]! * GAIN) continue;
			visits[v]! += 1;
			keep(v, Math.max(TOUCHING, ball.rollTo(point, QUICK)));
			queue.push(v);
		}
	}
	for (let v = 0; v < count; v += 1) {
		if (!(depthsMm[v]! > 0 && depthsMm[v]! < Infinity)) continue;
		[ball.x, ball.y, ball.z] = centerAt(v);
		let nearest = v;
		for (let k = starts[v]!; k < starts[v + 1]!; k += 1) {
			const gap = ball.gapTo(vertexAt(mesh, v));
			[ball.x, ball.y, ball.z] = centerAt(links[k]!);
			if (ball.gapTo(vertexAt(mesh, v)) < gap) nearest = links[k]!;
			[ball.x, ball.y, ball.z] = centerAt(nearest);
		}
		keep(v, Math.max(TOUCHING, ball.rollTo(vertexAt(mesh, v), CAREFUL)));
	}
	// Nothing rolls into a part that no ball touches anywhere: it is left out, not called infinite.
	for (let v = 0; v < count; v += 1) if (depthsMm[v] === Infinity) depthsMm[v] = 0;
	return { depthsMm, centers };
}
