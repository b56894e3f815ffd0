import { chains, link, type PlanePoint, type UprightPlane } from './plane-cut';
import type { Bounds } from './measures';
import type { SurfaceDistance } from './surface-distance';

export interface PlaneBands {
	/** For each distance the outlines of all that is nearer to the pattern, over the board. */
	outlines: PlanePoint[][][];
	/** Spacing of the points asked, mm: an outline is right to about a tenth of it. */
	stepMm: number;
}

/** Points asked along the longer side of the picture. A choice: a pixel or two on a screen. */
const STEPS = 200;

/**
 * True sections of the offset solids in an upright plane: distances are taken in space, so a wall
 * that leans or ends before the plane shows as it is.
 *
 * @param outersMm - rising distances from the surface, each above 0
 */
export function planeBands(
	surface: SurfaceDistance,
	{ min, max }: Bounds,
	{ across, atMm }: UprightPlane,
	outersMm: readonly number[]
): PlaneBands {
	const reach = (outersMm.at(-1) ?? 0) * 1.02;
	const along = across === 'x' ? 1 : 0;
	const low = min[along]! - reach;
	const [width, height] = [max[along]! + reach - low, max[2]! + reach];
	const stepMm = Math.max(width, height) / STEPS;
	const columns = Math.ceil(width / stepMm) + 2;
	const rows = Math.ceil(height / stepMm) + 2;
	// Row 0 lies under the board and is far from everything, so that outlines close on the board.
	const values = new Float64Array(columns * rows).fill(Infinity);
	for (let row = 1; row < rows; row += 1) {
		for (let n = 0; n < columns; n += 1) {
			const column = row % 2 === 0 ? n : columns - 1 - n;
			const u = low + (column - 0.5) * stepMm;
			const v = (row - 1) * stepMm;
			values[row * columns + column] =
				across === 'x' ? surface.at(atMm, u, v) : surface.at(u, atMm, v);
		}
	}
	const outlines = outersMm.map((level) =>
		contours(values, columns, rows, level).map((ring) =>
			ring.map(({ x, y }) => ({ alongMm: low + (x - 0.5) * stepMm, upMm: (y - 1) * stepMm }))
		)
	);
	return { outlines, stepMm };
}

/** Rings around what lies below a level on a grid, by marching squares. */
function contours(
	values: Float64Array,
	columns: number,
	rows: number,
	level: number
): { x: number; y: number }[][] {
	const links = new Map<number, number[]>();
	const join = (a: number, b: number): void => {
		link(links, a, b);
		link(links, b, a);
	};
	// A grid edge is named by its first point, twice, plus one when it runs upward.
	for (let row = 0; row + 1 < rows; row += 1) {
		for (let column = 0; column + 1 < columns; column += 1) {
			const at = row * columns + column;
			const corners = [at, at + 1, at + columns + 1, at + columns];
			const isIn = corners.map((corner) => values[corner]! < level);
			const edges = [2 * at, 2 * (at + 1) + 1, 2 * (at + columns), 2 * at + 1];
			const crossed = edges.filter((_, k) => isIn[k] !== isIn[(k + 1) % 4]);
			if (crossed.length === 2) join(crossed[0]!, crossed[1]!);
			if (crossed.length !== 4) continue;
			const mean = corners.reduce((sum, corner) => sum + values[corner]!, 0) / 4;
			const [a, b, c, d] = edges as [number, number, number, number];
			if (mean < level === isIn[0]) {
				join(a, b);
				join(c, d);
			} else {
				join(d, a);
				join(b, c);
			}
		}
	}
	return chains(links).map((chain) =>
		chain.map((edge) => {
			const from = edge >> 1;
			const to = edge & 1 ? from + columns : from + 1;
			const t = between(values[from]!, values[to]!, level);
			const x = from % columns;
			const y = Math.floor(from / columns);
			return edge & 1 ? { x, y: y + t } : { x: x + t, y };
		})
	);
}

/** Where the level lies between two values; at the finite one when the other is the board's underside. */
function between(a: number, b: number, level: number): number {
	if (a === Infinity) return 1;
	if (b === Infinity) return 0;
	return (level - a) / (b - a);
}
