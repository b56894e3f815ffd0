import { measuresOf } from './measures';
import type { Mesh } from './mesh';
import { offsetVolumesMm3, type OffsetGrid } from './offset-volumes';
import { SurfaceDistance } from './surface-distance';

interface LayerVolume {
	/** Outer face of the layer, from the pattern's surface. */
	outerMm: number;
	volumeMl: number;
	/** How far the volume may be off by the computation, not by the brush: the change in the last refinement. */
	errorMl: number;
}

export interface LayerVolumes {
	layers: LayerVolume[];
	/** Whether every layer came within the asked fraction. */
	isWithin: boolean;
}

/** Asked accuracy of each layer. */
const WITHIN_FRACTION = 0.005;
const MOST_ROUNDS = 4;

/**
 * Volumes of layers laid one upon the other over a pattern that lies on the board, from the true offset
 * surfaces: recesses fill, edges round off, and nothing goes below the board.
 *
 * @param mesh - closed, outward, in millimeters, on the board
 * @param thicknessesMm - of each layer from the inside out, each above 0
 * @throws RangeError when a thickness is not above 0 or the mesh has no volume
 */
export function layerVolumes(
	mesh: Mesh,
	thicknessesMm: readonly number[],
	surface = new SurfaceDistance(mesh),
	withinFraction = WITHIN_FRACTION
): LayerVolumes {
	const bad = thicknessesMm.find((thickness) => !(thickness > 0 && thickness < Infinity));
	if (bad !== undefined) throw new RangeError(`a layer is ${bad} mm thick; accepted: above 0`);
	const { bounds, signedVolume } = measuresOf(mesh);
	if (!(signedVolume > 0))
		throw new RangeError(`the mesh has a volume of ${signedVolume} mm³; accepted: above 0`);
	let outerMm = 0;
	const outers = thicknessesMm.map((thickness) => (outerMm += thickness));
	let grid = firstGrid(
		bounds.max.map((high, axis) => high - bounds.min[axis]!),
		thicknessesMm
	);
	let before: number[] | null = null;
	for (let round = 1; ; round += 1) {
		const { volumesMm3 } = offsetVolumesMm3(surface, bounds, outers, grid);
		const now = [...volumesMm3].map((v, i) => v - (i === 0 ? signedVolume : volumesMm3[i - 1]!));
		const errors = now.map((v, i) => (before === null ? Infinity : Math.abs(v - before[i]!)));
		const isWithin = errors.every((error, i) => error <= withinFraction * now[i]!);
		if (isWithin || round >= MOST_ROUNDS) {
			const layers = outers.map((outer, i) => ({
				outerMm: outer,
				volumeMl: now[i]! / 1000,
				errorMl: errors[i]! / 1000
			}));
			return { layers, isWithin };
		}
		before = now;
		grid = finerGrid(grid);
	}
}

/** Cells a twentieth of the pattern; finer ones follow when two rounds disagree. Measured on round and rough bodies. */
function firstGrid(sizes: number[], thicknessesMm: readonly number[]): OffsetGrid {
	const total = thicknessesMm.reduce((sum, thickness) => sum + thickness, 0);
	const size = Math.cbrt(sizes.reduce((product, side) => product * Math.max(side, total), 1));
	// A face belongs to the layer below it and to the one above.
	const thinnest = thicknessesMm.map((t, i) => Math.min(t, thicknessesMm[i + 1] ?? Infinity));
	const cellMm = size / 20;
	const longestCutMm = thinnest.map((t) => Math.max(3 * t, size / 30));
	return {
		cellMm,
		depth: Math.max(4, Math.ceil(Math.log2(cellMm / Math.min(...longestCutMm))) + 2),
		tolerancesMm: thinnest.map((t) => 0.3 * t),
		longestCutMm
	};
}

/** Cells not halved but less by half as much again, so that they lie elsewhere and chance does not repeat. */
function finerGrid(grid: OffsetGrid): OffsetGrid {
	return {
		cellMm: grid.cellMm / 1.5,
		depth: grid.depth,
		tolerancesMm: grid.tolerancesMm.map((t) => t / 2),
		longestCutMm: grid.longestCutMm.map((side) => side / 1.5)
	};
}
