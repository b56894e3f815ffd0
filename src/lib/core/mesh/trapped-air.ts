import type { SurfaceDistance } from './surface-distance';
import { RollingBall } from './ball-contact';
import type { Vec3 } from './mesh';

export interface TrappedAir {
	airMm3: number;
	/** Diameter of the largest ball that fits into the air. */
	widthMm: number;
}

const CELLS = 6;
const MOST_CELLS = 60_000;

/**
 * Air between a surface and the underside of a coat, counted in cells around the given vertices.
 *
 * @param vertices - x, y, z and normal of each bridged vertex, six numbers in a row
 * @param centers - of the balls that touch around there
 */
export function trappedAir(
	surface: SurfaceDistance,
	reachMm: number,
	vertices: readonly number[],
	centers: CenterGrid
): TrappedAir {
	let side = reachMm / CELLS;
	let cells = cellsNear(vertices, reachMm, side);
	while (cells === null) {
		side *= 1.5;
		cells = cellsNear(vertices, reachMm, side);
	}
	const ball = new RollingBall(surface, reachMm);
	const isAir = (at: Vec3): boolean => centers.nearestMm(...at) > reachMm;
	let airMm3 = 0;
	let widest: { score: number; at: Vec3 } = {
		score: 0,
		at: [vertices[0]!, vertices[1]!, vertices[2]!]
	};
	for (const [i, j, k] of cells.values()) {
		const [x, y, z] = [(i + 0.5) * side, (j + 0.5) * side, (k + 0.5) * side];
		const d = surface.at(x, y, z);
		if (d <= -side / 2 || d >= reachMm) continue;
		const isWet = ball.fitsAt(
			surface.footX,
			surface.footY,
			surface.footZ,
			surface.dirX,
			surface.dirY,
			surface.dirZ
		);
		if (isWet) continue;
		const gap = centers.nearestMm(x, y, z) - reachMm;
		const part =
			Math.min(1, Math.max(0, d / side + 0.5)) * Math.min(1, Math.max(0, gap / side + 0.5));
		airMm3 += part * side ** 3;
		// Of cells as wide the one farthest inside: at the rim of the air there is no room to climb.
		if (gap > 0 && d + gap * 1e-3 > widest.score) {
			widest = { score: d + gap * 1e-3, at: [x, y, z] };
		}
	}
	return { airMm3, widthMm: 2 * climbed(surface, widest.at, side, isAir) };
}

/** The widest cell lies beside the middle of the recess: from there a few steps up the distance, within the air. */
function climbed(
	surface: SurfaceDistance,
	from: Vec3,
	side: number,
	isAir: (at: Vec3) => boolean
): number {
	let at = from;
	let best = surface.at(...at);
	for (let step = side / 2, i = 0; i < 12; i += 1) {
		// Between two walls as near as each other neither points to the middle: all ways are tried.
		const higher = WAYS.map(([x, y, z]): Vec3 => [
			at[0] + x * step,
			at[1] + y * step,
			at[2] + z * step
		])
			.map((next) => ({ next, d: isAir(next) ? surface.at(...next) : 0 }))
			.reduce((most, one) => (one.d > most.d ? one : most), { next: at, d: best });
		if (higher.d > best) [at, best] = [higher.next, higher.d];
		else step /= 2;
	}
	return Math.max(0, best);
}

/** The 26 ways to a neighbor in a grid. */
const WAYS: readonly Vec3[] = Array.from({ length: 27 }, (_, n): Vec3 => [
	(n % 3) - 1,
	(Math.floor(n / 3) % 3) - 1,
	Math.floor(n / 9) - 1
]).filter((way) => way.some((step) => step !== 0));

type Cell = [number, number, number];

/** Cells up to a reach above each vertex, with those around them; null when there are more than `MOST_CELLS`. */
function cellsNear(
	vertices: readonly number[],
	reachMm: number,
	side: number
): Map<number, Cell> | null {
	const passed = new Map<number, Cell>();
	const add = (cells: Map<number, Cell>, i: number, j: number, k: number): void => {
		const key = keyOf(i, j, k);
		if (!cells.has(key)) cells.set(key, [i, j, k]);
	};
	for (let v = 0; v < vertices.length; v += 6) {
		for (let s = 0; s <= reachMm; s += side) {
			add(
				passed,
				Math.floor((vertices[v]! + s * vertices[v + 3]!) / side),
				Math.floor((vertices[v + 1]! + s * vertices[v + 4]!) / side),
				Math.floor((vertices[v + 2]! + s * vertices[v + 5]!) / side)
			);
		}
		if (passed.size > MOST_CELLS) return null;
	}
	const cells = new Map<number, Cell>();
	for (const [i, j, k] of passed.values()) {
		if (cells.size > MOST_CELLS) return null;
		for (let n = 0; n < 27; n += 1) {
			add(cells, i + (n % 3) - 1, j + (Math.floor(n / 3) % 3) - 1, k + Math.floor(n / 9) - 1);
		}
	}
	return cells.size > MOST_CELLS ? null : cells;
}

/** One number for a cell: 65 536 cells each way from the middle fit into the digits a number has. */
function keyOf(i: number, j: number, k: number): number {
	return (i * KEYS_A_SIDE + j) * KEYS_A_SIDE + k;
}

const KEYS_A_SIDE = 2 ** 17;

/** Ball centers sorted into cells, to find the nearest within about a reach. */
export class CenterGrid {
	readonly #side: number;
	readonly #cells = new Map<number, number[]>();

	constructor(centers: readonly number[], reachMm: number) {
		this.#side = reachMm;
		const seen = new Set<number>();
		for (let i = 0; i < centers.length; i += 3) {
			const [x, y, z] = [centers[i]!, centers[i + 1]!, centers[i + 2]!];
			// Centers closer together than a twentieth of the reach tell nothing new.
			const fine = reachMm / 20;
			const place = keyOf(Math.round(x / fine), Math.round(y / fine), Math.round(z / fine));
			if (seen.has(place)) continue;
			seen.add(place);
			const key = keyOf(this.#cellOf(x), this.#cellOf(y), this.#cellOf(z));
			const cell = this.#cells.get(key);
			if (cell) cell.push(x, y, z);
			else this.#cells.set(key, [x, y, z]);
		}
	}

	#cellOf(value: number): number {
		return Math.floor(value / this.#side);
	}

	/** Distance to the nearest center; twice the reach when none is that near. */
	nearestMm(x: number, y: number, z: number): number {
		let least = (2 * this.#side) ** 2;
		const [i, j, k] = [this.#cellOf(x), this.#cellOf(y), this.#cellOf(z)];
		for (let n = 0; n < 27; n += 1) {
			const points = this.#cells.get(
				keyOf(i + (n % 3) - 1, j + (Math.floor(n / 3) % 3) - 1, k + Math.floor(n / 9) - 1)
			);
			for (let p = 0; points && p < points.length; p += 3) {
				least = Math.min(
					least,
					(points[p]! - x) ** 2 + (points[p + 1]! - y) ** 2 + (points[p + 2]! - z) ** 2
				);
			}
		}
		return Math.sqrt(least);
	}
}
