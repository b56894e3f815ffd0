import { heightFieldOf, leastHeightNear, type HeightField } from './height-field';
import { lockedSamples, markedAreaMm2 } from './locked';
import { measuresOf } from './measures';
import { vertexAt, type Vec3 } from './mesh';
import { offsetSamples } from './offset-samples';
import type { SurfaceDistance } from './surface-distance';

export interface Undercut {
	/** Farthest sideways way the glove must give to come off upward, mm; 0 without undercut. */
	depthMm: number;
	at: Vec3 | null;
	areaCm2: number;
}

const UP: Vec3 = [0, 0, 1];
const COLUMNS = 400;

/** The deepest undercut of a placed pattern against drawing the glove upward, good to about a 300th of its size. */
export function undercutOf(surface: SurfaceDistance): Undercut {
	const { mesh } = surface;
	const samples = offsetSamples(surface, 0);
	const { min, max } = measuresOf(mesh).bounds;
	const size = Math.max(...max.map((high, axis) => high - min[axis]!));
	const sideMm = size / COLUMNS;
	const locked = lockedSamples(mesh, samples, UP, { offsetMm: 0, columns: COLUMNS });
	const field = heightFieldOf(mesh, UP, sideMm, size / 20);
	let [depthMm, at]: [number, Vec3 | null] = [0, null];
	// Corners of what is locked, not the middles: the deepest point is on an edge.
	const corners = new Set<number>();
	locked.forEach((mark, i) => {
		const t = 3 * samples.triangleOf[i]!;
		if (mark) samples.mesh.triangles.subarray(t, t + 3).forEach((v) => corners.add(v));
	});
	for (const v of corners) {
		const point = vertexAt(samples.mesh, v);
		const way = wayOutMm(field, point, depthMm);
		if (way > depthMm) [depthMm, at] = [way, point];
	}
	return { depthMm, at, areaCm2: markedAreaMm2(samples, locked) / 100 };
}

/** Distance to the nearest column that is open above the point; −1 as soon as one lies within `atLeastMm`. */
function wayOutMm(field: HeightField, point: Vec3, atLeastMm: number): number {
	const { sideMm, columns, rows, left, low, heights, right, up } = field;
	const x = (point[0] * right[0] + point[1] * right[1] - left) / sideMm;
	const y = (point[0] * up[0] + point[1] * up[1] - low) / sideMm;
	if (leastHeightNear(field, point) <= point[2] + sideMm / 2) return 0;
	let best = Infinity;
	for (let ring = 1; ring < Math.min(best + 1, columns + rows); ring += 1) {
		for (let dj = -ring; dj <= ring; dj += 1) {
			const step = Math.abs(dj) === ring ? 1 : 2 * ring;
			for (let di = -ring; di <= ring; di += step) {
				const [i, j] = [Math.round(x) + di, Math.round(y) + dj];
				const isOff = i < 0 || j < 0 || i >= columns || j >= rows;
				const height = isOff ? -Infinity : heights[j * columns + i]!;
				if (height > point[2] + sideMm / 2) continue;
				best = Math.min(best, Math.hypot(i - x, j - y));
				if (best * sideMm < atLeastMm) return -1;
			}
		}
	}
	// The edge of the body lies half a column before the first column that is open.
	return Math.max(0, (best - 0.5) * sideMm);
}
