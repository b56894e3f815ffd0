import { measuresOf } from './measures';
import type { Mesh, Vec3 } from './mesh';
import { planeAxes, pointOnPlane, sectionOf, type Outline, type Plane } from './section';
import type { SurfaceDistance } from './surface-distance';
import { dot } from './vector';

export interface SectionBands {
	/** The pattern itself. */
	pattern: Outline[];
	/** For each distance the outline of everything within it, above the board. */
	offsets: { distanceMm: number; outlines: Outline[] }[];
}

const CELLS = 220;

/**
 * A true section at a plane, with the outer face of each coat: the lines where the distance from the
 * pattern, in space and not only in the plane, has the given values.
 *
 * @param distancesMm - rising, above 0
 */
export function sectionBands(
	mesh: Mesh,
	plane: Plane,
	distancesMm: readonly number[],
	surface: SurfaceDistance
): SectionBands {
	const pattern = sectionOf(mesh, plane);
	const reach = distancesMm.at(-1) ?? 0;
	if (pattern.length === 0 || reach === 0) return { pattern, offsets: [] };
	const isUpright = planeAxes(plane).up[2] > 0.5;
	// All of the pattern, not its section alone: a coat over what stands out before or behind the plane shows in it too.
	const all = boxOnPlane(mesh, plane);
	const low = (key: 'xMm' | 'yMm'): number => Math.min(...all.map((p) => p[key])) - reach;
	const high = (key: 'xMm' | 'yMm'): number => Math.max(...all.map((p) => p[key])) + reach;
	const side = Math.max(high('xMm') - low('xMm'), high('yMm') - low('yMm')) / CELLS;
	const from = { xMm: low('xMm') - side, yMm: isUpright ? 0 : low('yMm') - side };
	const columns = Math.ceil((high('xMm') - from.xMm) / side) + 2;
	const rows = Math.ceil((high('yMm') - from.yMm) / side) + 2;
	const values = new Float64Array(columns * rows);
	for (let n = 0; n < values.length; n += 1) {
		const [i, j] = [n % columns, Math.floor(n / columns)];
		values[n] = surface.at(
			...pointOnPlane(plane, { xMm: from.xMm + i * side, yMm: from.yMm + j * side })
		);
	}
	return {
		pattern,
		offsets: distancesMm.map((distanceMm) => ({
			distanceMm,
			outlines: contours(values, columns, distanceMm).map((line) =>
				line.map(([i, j]) => ({ xMm: from.xMm + i * side, yMm: from.yMm + j * side }))
			)
		}))
	};
}

/** Corners of the box around a mesh, seen at right angles to a plane. */
function boxOnPlane(mesh: Mesh, plane: Plane): Outline {
	const { min, max } = measuresOf(mesh).bounds;
	const { right, up } = planeAxes(plane);
	return Array.from({ length: 8 }, (_, n) => {
		const corner: Vec3 = [
			n & 1 ? max[0] : min[0],
			n & 2 ? max[1] : min[1],
			n & 4 ? max[2] : min[2]
		];
		return { xMm: dot(corner, right), yMm: dot(corner, up) };
	});
}

/** Lines at one level through a grid of values, closed below its first row; lower values lie to the left. */
function contours(values: Float64Array, columns: number, level: number): [number, number][][] {
	const rows = values.length / columns;
	// A row of outside below the first closes the outlines on the board.
	const at = (i: number, j: number): number => (j < 0 ? level + 1e9 : values[j * columns + i]!);
	const points = new Map<string, [number, number]>();
	const next = new Map<string, string>();
	const cut = (i: number, j: number, u: number, v: number): string => {
		const [a, b] = [at(i, j) - level, at(u, v) - level];
		const part = a / (a - b);
		const key = i + j < u + v ? `${i},${j},${u},${v}` : `${u},${v},${i},${j}`;
		points.set(key, [i + (u - i) * part, Math.max(0, j + (v - j) * part)]);
		return key;
	};
	// Each cell is two triangles: then no case is ambiguous.
	const triangle = (corners: [number, number][]): void => {
		const inside = corners.map(([i, j]) => at(i, j) < level);
		const count = inside.filter(Boolean).length;
		if (count === 0 || count === 3) return;
		const alone = inside.findIndex((is) => is === (count === 1));
		const [a, b, c] = [0, 1, 2].map((k) => corners[(alone + k) % 3]!) as [
			[number, number],
			[number, number],
			[number, number]
		];
		const [ab, ac] = [cut(...a, ...b), cut(...a, ...c)];
		if (count === 1) next.set(ab, ac);
		else next.set(ac, ab);
	};
	for (let j = -1; j + 1 < rows; j += 1) {
		for (let i = 0; i + 1 < columns; i += 1) {
			triangle([
				[i, j],
				[i + 1, j],
				[i + 1, j + 1]
			]);
			triangle([
				[i, j],
				[i + 1, j + 1],
				[i, j + 1]
			]);
		}
	}
	return chained(points, next);
}

function chained(
	points: Map<string, [number, number]>,
	next: Map<string, string>
): [number, number][][] {
	const lines: [number, number][][] = [];
	for (const start of [...next.keys()]) {
		const line: [number, number][] = [];
		for (let key: string | undefined = start; key !== undefined && next.has(key);) {
			line.push(points.get(key)!);
			const following: string | undefined = next.get(key);
			next.delete(key);
			key = following;
		}
		if (line.length > 2) lines.push(line);
	}
	return lines;
}
