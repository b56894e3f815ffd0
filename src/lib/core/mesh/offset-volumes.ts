import { cubeFraction } from './cube-cut';
import type { Bounds } from './measures';
import type { SurfaceDistance } from './surface-distance';

const ROOT_3 = Math.sqrt(3);

export interface OffsetGrid {
	/** Side of the largest cells that are cut, mm. */
	cellMm: number;
	/** How often a cell may be halved beyond that. */
	depth: number;
	/** For each distance: a cell is halved until halving moves that surface in it by less than this, mm. */
	tolerancesMm: readonly number[];
	/**
	 * For each distance: a cell that its surface passes is halved while its side is longer, even where its
	 * parts agree with the whole: they do by chance when a recess is narrower than the cell.
	 */
	longestCutMm: readonly number[];
}

/**
 * For each distance the volume above the board within it of the surface, the inside counted, mm³.
 *
 * Cells of space are cut by the plane at right angles to the shortest way to the surface; a cell is
 * halved where its eight parts disagree with the whole, and what is left of the error is taken off by
 * Richardson's extrapolation, the error being of second order.
 *
 * @param distancesMm - rising, zero or more
 */
export function offsetVolumesMm3(
	surface: SurfaceDistance,
	{ min, max }: Bounds,
	distancesMm: readonly number[],
	grid: OffsetGrid
): { volumesMm3: Float64Array; askedPoints: number } {
	const reach = distancesMm.at(-1) ?? 0;
	const sum = new Sum(surface, distancesMm, grid);
	const side = grid.cellMm;
	const steps = [0, 1, 2].map((axis) => {
		const low = axis === 2 ? 0 : min[axis]! - reach;
		return { low, count: Math.max(1, Math.ceil((max[axis]! + reach - low) / side)) };
	});
	const [x, y, z] = steps as [(typeof steps)[0], (typeof steps)[0], (typeof steps)[0]];
	for (let k = 0; k < z.count; k += 1) {
		for (let j = 0; j < y.count; j += 1) {
			// There and back, so that neighbors in space follow each other.
			for (let n = 0; n < x.count; n += 1) {
				const i = (j + k) % 2 === 0 ? n : x.count - 1 - n;
				const at = [i, j, k].map((step, axis) => steps[axis]!.low + (step + 0.5) * side);
				sum.addCell(at as [number, number, number], n === 0);
			}
		}
	}
	return { volumesMm3: sum.volumes, askedPoints: sum.asked };
}

class Sum {
	readonly volumes: Float64Array;
	asked = 0;
	readonly #surface: SurfaceDistance;
	readonly #distances: Float64Array;
	readonly #grid: OffsetGrid;
	readonly #tolerances: Float64Array;
	readonly #longestCut: Float64Array;
	/** Longest side that the surfaces through the cell measured last allow. */
	#allowedMm = Infinity;
	/** Distance of the middle of the part measured last. */
	#measuredMm = Infinity;
	/** Whether the middle of the cell added last is in the solid. */
	#isInside = false;
	/** Parts of a cell and of its eight parts, a row for each depth. */
	readonly #parts: Float64Array[];

	constructor(surface: SurfaceDistance, distancesMm: readonly number[], grid: OffsetGrid) {
		this.#surface = surface;
		this.#distances = Float64Array.from(distancesMm);
		this.#grid = grid;
		this.#tolerances = Float64Array.from(grid.tolerancesMm);
		this.#longestCut = Float64Array.from(grid.longestCutMm);
		this.volumes = new Float64Array(distancesMm.length);
		this.#parts = Array.from(
			{ length: grid.depth + 2 },
			() => new Float64Array(9 * distancesMm.length)
		);
	}

	/**
	 * Adds a cell that lies beside the last one, or is the first of a row. A cell that no surface comes near is as
	 * much inside or outside as the last one: from the middle of a bowl all its triangles are as far as each other,
	 * and looking for the nearest would take longer than all other cells together.
	 */
	addCell([x, y, z]: readonly [number, number, number], isFirst: boolean): void {
		const side = this.#grid.cellMm;
		const parts = this.#parts[0]!;
		const nearMm = Math.max(side, this.#distances.at(-1)! + (side * ROOT_3) / 2);
		if (!isFirst && !this.#surface.comesWithin(nearMm, x, y, z)) {
			if (this.#isInside) this.#take(parts.fill(1), 0, side);
			return;
		}
		const isCut = this.#measure(x, y, z, side, parts, 0);
		this.#isInside = this.#measuredMm < 0;
		if (isCut) this.#refine(x, y, z, side, 0, parts, 0);
		else this.#take(parts, 0, side);
	}

	/** Fractions of the cell within each distance; says whether any of the surfaces passes through it. */
	#measure(
		x: number,
		y: number,
		z: number,
		side: number,
		parts: Float64Array,
		from: number
	): boolean {
		const surface = this.#surface;
		const distances = this.#distances;
		this.asked += 1;
		const d = surface.at(x, y, z);
		this.#measuredMm = d;
		const reach = (side * ROOT_3) / 2;
		let isCut = false;
		this.#allowedMm = Infinity;
		for (let i = 0; i < distances.length; i += 1) {
			const over = distances[i]! - d;
			if (over >= reach) parts[from + i] = 1;
			else if (over <= -reach) parts[from + i] = 0;
			else {
				isCut = true;
				if (this.#longestCut[i]! < this.#allowedMm) this.#allowedMm = this.#longestCut[i]!;
				parts[from + i] = cubeFraction(surface.dirX, surface.dirY, surface.dirZ, over / side);
			}
		}
		return isCut;
	}

	#refine(
		x: number,
		y: number,
		z: number,
		side: number,
		depth: number,
		own: Float64Array,
		from: number
	): void {
		const count = this.#distances.length;
		const parts = this.#parts[depth + 1]!;
		const quarter = side / 4;
		let cut = 0;
		let allowedMm = Infinity;
		for (let k = 0; k < 8; k += 1) {
			const isCut = this.#measure(
				x + (k & 1 ? quarter : -quarter),
				y + (k & 2 ? quarter : -quarter),
				z + (k & 4 ? quarter : -quarter),
				side / 2,
				parts,
				k * count
			);
			if (isCut) cut |= 1 << k;
			allowedMm = Math.min(allowedMm, this.#allowedMm);
		}
		let agrees = side <= allowedMm;
		for (let i = 0; agrees && i < count; i += 1) {
			const movedMm = Math.abs(meanOf(parts, i, count) - own[from + i]!) * side;
			agrees = movedMm <= this.#tolerances[i]!;
		}
		if (depth >= this.#grid.depth || agrees) {
			const volume = side ** 3;
			for (let i = 0; i < count; i += 1) {
				const mean = meanOf(parts, i, count);
				this.volumes[i]! += volume * (mean + (mean - own[from + i]!) / 3);
			}
			return;
		}
		for (let k = 0; k < 8; k += 1) {
			if ((cut & (1 << k)) === 0) this.#take(parts, k * count, side / 2);
			else {
				this.#refine(
					x + (k & 1 ? quarter : -quarter),
					y + (k & 2 ? quarter : -quarter),
					z + (k & 4 ? quarter : -quarter),
					side / 2,
					depth + 1,
					parts,
					k * count
				);
			}
		}
	}

	#take(parts: Float64Array, from: number, side: number): void {
		const volume = side ** 3;
		for (let i = 0; i < this.volumes.length; i += 1) this.volumes[i]! += parts[from + i]! * volume;
	}
}

function meanOf(parts: Float64Array, i: number, count: number): number {
	let sum = 0;
	for (let k = 0; k < 8; k += 1) sum += parts[k * count + i]!;
	return sum / 8;
}
