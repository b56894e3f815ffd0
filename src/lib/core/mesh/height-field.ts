import type { Mesh, Vec3 } from './mesh';
import { acrossTo, dot, scaled } from './vector';

/** Heights of a body's farther side, seen along a direction, in square columns. */
export interface HeightField {
	direction: Vec3;
	right: Vec3;
	up: Vec3;
	sideMm: number;
	columns: number;
	rows: number;
	/** Where the first column's middle lies along `right` and `up`. */
	left: number;
	low: number;
	/** Greatest height along the direction in each column; −∞ where there is nothing. */
	heights: Float64Array;
}

/**
 * The height field of a mesh, with room for `marginMm` around it.
 *
 * @param direction - unit vector
 */
export function heightFieldOf(
	mesh: Mesh,
	direction: Vec3,
	sideMm: number,
	marginMm: number
): HeightField {
	const [right, up] = acrossTo(direction);
	const { positions, triangles } = mesh;
	const seen = new Float64Array(positions.length);
	let [left, low, most, top] = [Infinity, Infinity, -Infinity, -Infinity];
	for (let v = 0; v < positions.length; v += 3) {
		const [x, y, z] = [positions[v]!, positions[v + 1]!, positions[v + 2]!];
		seen[v] = x * right[0] + y * right[1] + z * right[2];
		seen[v + 1] = x * up[0] + y * up[1] + z * up[2];
		seen[v + 2] = x * direction[0] + y * direction[1] + z * direction[2];
		left = Math.min(left, seen[v]!);
		most = Math.max(most, seen[v]!);
		low = Math.min(low, seen[v + 1]!);
		top = Math.max(top, seen[v + 1]!);
	}
	const margin = marginMm + 2 * sideMm;
	left -= margin;
	low -= margin;
	const columns = Math.ceil((most + margin - left) / sideMm) + 1;
	const rows = Math.ceil((top + margin - low) / sideMm) + 1;
	const heights = new Float64Array(columns * rows).fill(-Infinity);
	for (let v = 0; v < seen.length; v += 3) {
		seen[v] = (seen[v]! - left) / sideMm;
		seen[v + 1] = (seen[v + 1]! - low) / sideMm;
		const n = Math.round(seen[v + 1]!) * columns + Math.round(seen[v]!);
		// A triangle smaller than a column may miss its middle, its corners do not.
		heights[n] = Math.max(heights[n]!, seen[v + 2]!);
	}
	for (let t = 0; t < triangles.length; t += 3) {
		drawTriangle(
			seen,
			3 * triangles[t]!,
			3 * triangles[t + 1]!,
			3 * triangles[t + 2]!,
			heights,
			columns
		);
	}
	return { direction, right, up, sideMm, columns, rows, left, low, heights };
}

function drawTriangle(
	seen: Float64Array,
	a: number,
	b: number,
	c: number,
	heights: Float64Array,
	columns: number
): void {
	const [ax, ay, bx, by, cx, cy] = [
		seen[a]!,
		seen[a + 1]!,
		seen[b]!,
		seen[b + 1]!,
		seen[c]!,
		seen[c + 1]!
	];
	const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
	if (Math.abs(area) < 1e-12) return;
	const dx =
		((seen[b + 2]! - seen[a + 2]!) * (cy - ay) - (seen[c + 2]! - seen[a + 2]!) * (by - ay)) / area;
	const dy =
		((seen[c + 2]! - seen[a + 2]!) * (bx - ax) - (seen[b + 2]! - seen[a + 2]!) * (cx - ax)) / area;
	const sign = Math.sign(area);
	const [toJ, fromJ] = [Math.floor(Math.max(ay, by, cy)), Math.ceil(Math.min(ay, by, cy))];
	const [toI, fromI] = [Math.floor(Math.max(ax, bx, cx)), Math.ceil(Math.min(ax, bx, cx))];
	for (let j = fromJ; j <= toJ; j += 1) {
		for (let i = fromI; i <= toI; i += 1) {
			if (sign * ((bx - ax) * (j - ay) - (by - ay) * (i - ax)) < 0) continue;
			if (sign * ((cx - bx) * (j - by) - (cy - by) * (i - bx)) < 0) continue;
			if (sign * ((ax - cx) * (j - cy) - (ay - cy) * (i - cx)) < 0) continue;
			const height = seen[a + 2]! + dx * (i - ax) + dy * (j - ay);
			const n = j * columns + i;
			if (height > heights[n]!) heights[n] = height;
		}
	}
}

/** The field of the body grown by a ball: what a glove of even thickness makes of it. */
export function grownField(field: HeightField, thicknessMm: number): HeightField {
	const { columns, rows, sideMm, heights } = field;
	if (thicknessMm <= 0) return field;
	const grown = new Float64Array(heights.length).fill(-Infinity);
	const reach = Math.floor(thicknessMm / sideMm);
	for (let dj = -reach; dj <= reach; dj += 1) {
		for (let di = -reach; di <= reach; di += 1) {
			const rise = thicknessMm ** 2 - (di * di + dj * dj) * sideMm ** 2;
			if (rise < 0) continue;
			const by = Math.sqrt(rise);
			for (let j = Math.max(0, -dj); j < Math.min(rows, rows - dj); j += 1) {
				for (
					let i = Math.max(0, -di), n = j * columns + i;
					i < Math.min(columns, columns - di);
					i += 1, n += 1
				) {
					const height = heights[n + dj * columns + di]! + by;
					if (height > grown[n]!) grown[n] = height;
				}
			}
		}
	}
	return { ...field, heights: grown };
}

/** The least height in the nine columns around a point: a wall beside it does not count as above it. */
export function leastHeightNear(
	{ right, up, left, low, sideMm, columns, rows, heights }: HeightField,
	point: Vec3
): number {
	const i = Math.round((dot(point, right) - left) / sideMm);
	const j = Math.round((dot(point, up) - low) / sideMm);
	let least = Infinity;
	for (let v = Math.max(0, j - 1); v <= Math.min(rows - 1, j + 1); v += 1) {
		for (let u = Math.max(0, i - 1); u <= Math.min(columns - 1, i + 1); u += 1) {
			least = Math.min(least, heights[v * columns + u]!);
		}
	}
	return least;
}

/** The point in space at a height over a column. */
export function pointOver(
	{ right, up, direction, left, low, sideMm }: HeightField,
	i: number,
	j: number,
	height: number
): Vec3 {
	const [a, b, c] = [
		scaled(right, left + i * sideMm),
		scaled(up, low + j * sideMm),
		scaled(direction, height)
	];
	return [a[0] + b[0] + c[0], a[1] + b[1] + c[1], a[2] + b[2] + c[2]];
}
