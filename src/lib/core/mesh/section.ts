import type { Mesh, Vec3 } from './mesh';
import { cross, dot, scaled } from './vector';

/** A flat cut: all points with normal · x = offsetMm. */
export interface Plane {
	/** Unit vector. */
	normal: Vec3;
	offsetMm: number;
}

/** A closed line of the cut, in the plane's own axes. */
export type Outline = { xMm: number; yMm: number }[];

/** Axes of the drawing: for upright planes y is up, and x to the right as seen along −normal. */
export function planeAxes({ normal }: Plane): { right: Vec3; up: Vec3 } {
	const isUpright = Math.abs(normal[2]) < 0.999;
	if (!isUpright) return { right: [1, 0, 0], up: [0, Math.sign(normal[2]), 0] };
	const length = Math.hypot(normal[0], normal[1]);
	const right: Vec3 = [-normal[1] / length, normal[0] / length, 0];
	return { right, up: cross(normal, right) };
}

/** The outlines in which a plane cuts a closed mesh; solid lies to the left of each. */
export function sectionOf(mesh: Mesh, plane: Plane): Outline[] {
	const { positions, triangles } = mesh;
	const { right, up } = planeAxes(plane);
	const heights = new Float64Array(positions.length / 3);
	for (let v = 0; v < heights.length; v += 1) {
		const height =
			dot([positions[3 * v]!, positions[3 * v + 1]!, positions[3 * v + 2]!], plane.normal) -
			plane.offsetMm;
		// A vertex on the plane is put a hair above it, so that each line has two ends.
		heights[v] = height === 0 ? 1e-12 : height;
	}
	const points: { xMm: number; yMm: number }[] = [];
	const pointOf = new Map<number, number>();
	const next = new Map<number, number>();
	const cut = (a: number, b: number): number => {
		const [low, high] = a < b ? [a, b] : [b, a];
		const key = low * heights.length + high;
		const known = pointOf.get(key);
		if (known !== undefined) return known;
		const part = heights[low]! / (heights[low]! - heights[high]!);
		const at = [0, 1, 2].map(
			(k) => positions[3 * low + k]! + (positions[3 * high + k]! - positions[3 * low + k]!) * part
		) as unknown as Vec3;
		points.push({ xMm: dot(at, right), yMm: dot(at, up) });
		pointOf.set(key, points.length - 1);
		return points.length - 1;
	};
	for (let t = 0; t < triangles.length; t += 3) {
		const corners = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
		const above = corners.map((v) => heights[v]! > 0);
		const count = above.filter(Boolean).length;
		if (count === 0 || count === 3) continue;
		// The corner that is alone on its side; the cut runs between its two sides.
		const alone = above.findIndex((is) => is === (count === 1));
		const [a, b, c] = [0, 1, 2].map((k) => corners[(alone + k) % 3]!) as [number, number, number];
		const [ab, ac] = [cut(a, b), cut(a, c)];
		if (count === 1) next.set(ab, ac);
		else next.set(ac, ab);
	}
	return chained(points, next);
}

function chained(points: Outline, next: Map<number, number>): Outline[] {
	const outlines: Outline[] = [];
	const left = new Map(next);
	for (const start of next.keys()) {
		if (!left.has(start)) continue;
		const outline: Outline = [];
		for (let at: number | undefined = start; at !== undefined && left.has(at);) {
			outline.push(points[at]!);
			const following: number | undefined = left.get(at);
			left.delete(at);
			at = following;
		}
		if (outline.length > 2) outlines.push(outline);
	}
	return outlines;
}

/** An upright plane through a point of the board, turned about it; 0° looks along y. */
export function uprightPlane({
	xMm,
	yMm,
	turnDeg
}: {
	xMm: number;
	yMm: number;
	turnDeg: number;
}): Plane {
	const turn = (turnDeg * Math.PI) / 180;
	const normal: Vec3 = [Math.sin(turn), -Math.cos(turn), 0];
	return { normal, offsetMm: normal[0] * xMm + normal[1] * yMm };
}

/** A point of the drawing back in space. */
export function pointOnPlane(plane: Plane, { xMm, yMm }: { xMm: number; yMm: number }): Vec3 {
	const { right, up } = planeAxes(plane);
	const base = scaled(plane.normal, plane.offsetMm);
	return [0, 1, 2].map((k) => base[k]! + right[k]! * xMm + up[k]! * yMm) as unknown as Vec3;
}
