import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';
import { MAX_AREA_CM2, MAX_LENGTH_MM } from '../quantity/limits';

export const coatVolumeLaw: Law = {
	id: 'coat-volume',
	name: 'Volume of a coat of even thickness',
	formula: 'V = A·t + E·t²/2 + K·t³/3 − Σ L·tan(φ/2)·t²',
	source:
		'Steiner 1840, volume of parallel bodies, local form (Crane, Discrete Differential Geometry notes, 2019); inside edges: overlap of two slabs (plane geometry)',
	validity:
		'thickness 0 to 100 mm, smaller than every hollow radius and than half of every gap; corners where three inside edges meet are not counted'
};

/** What a coat sees of a surface. Edges and corners count as sharply curved surface. */
export interface CoatSurface {
	areaCm2: number;
	/** Length times turn (rad) of the outside edges; twice the integral of mean curvature if round. */
	edgeTurnMm: number;
	/** Integral of the Gaussian curvature; a box corner adds π/2, a half sphere 2π. */
	cornerTurnSr: number;
	/** Edges that turn inward, as between a post and a plate: 90° for a wall on a floor. */
	insideEdges?: readonly { lengthMm: number; turnDeg: number }[];
}

const CM2_PER_MM2 = 0.01;
const ML_PER_MM3 = 0.001;
const RAD_PER_DEG = Math.PI / 180;

/** @throws RangeError for a surface or thickness out of range */
function assertSurface(surface: CoatSurface, thicknessMm: number): void {
	assertWithin(surface.areaCm2, 0, MAX_AREA_CM2, 'areaCm2');
	assertWithin(surface.edgeTurnMm, -1e6, 1e6, 'edgeTurnMm');
	assertWithin(surface.cornerTurnSr, -1e4, 1e4, 'cornerTurnSr');
	assertWithin(thicknessMm, 0, 100, 'thicknessMm');
	for (const { lengthMm, turnDeg } of surface.insideEdges ?? []) {
		assertWithin(lengthMm, 0, 100 * MAX_LENGTH_MM, 'insideEdges.lengthMm');
		assertWithin(turnDeg, 0, 150, 'insideEdges.turnDeg');
	}
}

/** Sum of L·tan(φ/2) over the inside edges, in mm: what two slabs share, per thickness squared. */
function overlapMm(surface: CoatSurface): number {
	return (surface.insideEdges ?? []).reduce(
		(sum, { lengthMm, turnDeg }) => sum + lengthMm * Math.tan((turnDeg * RAD_PER_DEG) / 2),
		0
	);
}

/**
 * Volume between a surface and its parallel surface at `thicknessMm`, in mL.
 *
 * @throws RangeError for a surface or thickness out of range, and when the inside edges overlap so
 *   far that the law no longer holds
 */
export function coatVolumeMl(surface: CoatSurface, thicknessMm: number): number {
	assertSurface(surface, thicknessMm);
	const t = thicknessMm;
	const slab = (surface.areaCm2 / CM2_PER_MM2) * t;
	const outside = (surface.edgeTurnMm / 2) * t ** 2 + (surface.cornerTurnSr / 3) * t ** 3;
	const volumeMl = (slab + outside - overlapMm(surface) * t ** 2) * ML_PER_MM3;
	assertWithin(volumeMl, 0, 1e9, 'volume of the coat in mL (thickness too large for the surface)');
	return volumeMl;
}

/** Area of the parallel surface at `thicknessMm`, in cm²: what the next coat will cover. */
export function coatedAreaCm2(surface: CoatSurface, thicknessMm: number): number {
	assertSurface(surface, thicknessMm);
	const growthMm2 =
		surface.edgeTurnMm * thicknessMm +
		surface.cornerTurnSr * thicknessMm ** 2 -
		2 * overlapMm(surface) * thicknessMm;
	const areaCm2 = surface.areaCm2 + growthMm2 * CM2_PER_MM2;
	assertWithin(areaCm2, 0, 1e9, 'coated area in cm² (thickness too large for the surface)');
	return areaCm2;
}

/**
 * Volume of each coat in mL, in order: each lies on the one before it, so later coats on an outward
 * surface take more than their thickness alone says. They sum to the volume at the total thickness.
 */
export function coatVolumesMl(surface: CoatSurface, thicknessesMm: readonly number[]): number[] {
	let totalMm = 0;
	let belowMl = 0;
	return thicknessesMm.map((thicknessMm) => {
		assertWithin(thicknessMm, 0, 100, 'thicknessMm');
		totalMm += thicknessMm;
		const uptoMl = coatVolumeMl(surface, totalMm);
		const volumeMl = uptoMl - belowMl;
		belowMl = uptoMl;
		return volumeMl;
	});
}
