import { upwardDirections } from './directions';
import { leastFacing } from './least-facing';
import { lockedSamples, markedAreaMm2 } from './locked';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { fewerSamples, offsetSamples, type OffsetSamples } from './offset-samples';
import { bestParting, isOfThird, type Drawn, type PartedShell } from './parting';
import { patchOutlines } from './patch-outlines';
import { SurfaceDistance } from './surface-distance';

export interface ShellOpening {
	/** Whether a shell in one piece leaves the coated pattern. */
	isFree: boolean;
	/** The direction that locks least, upright where that is as good. */
	direction: Vec3;
	lockedCm2: number;
	/** Of the area the shell lies on. */
	lockedFraction: number;
	/** The pattern in fine triangles, and for each whether the shell locks over it. */
	mesh: Mesh;
	lockedTriangles: Uint8Array;
	/** When it is not free: the best shell in two halves, with a third piece if that frees more. */
	parted: PartedShell | null;
	/** Lines around the third piece, on the pattern: x, y, z after each other. */
	thirdOutlines: number[][];
	/** Least glove thickness that frees a one-piece shell, mm; null when up to four times as thick none does. */
	freeingGloveMm: number | null;
}

/** Less than this part of the area is noise of the mesh: a shell gives that much. A choice. */
const NOISE_FRACTION = 0.003;
const THICKER = [1.25, 1.5, 2, 2.5, 3, 4];
/** The least freeing glove is narrowed down to this; nobody brushes closer. */
const TO_MM = 0.5;
const SEARCH_SAMPLES = 4000;
const COARSE_COLUMNS = 110;
const FINE_COLUMNS = 240;

/**
 * Whether the rigid shell leaves the pattern under its glove, in which direction, and how it must be
 * parted when it does not. The glove is taken as still on the pattern, of even thickness.
 *
 * @param gloveMm - thickness of glove and detail coats together, above 0
 * @throws RangeError when the glove has no thickness
 */
export function shellOpening(
	mesh: Mesh,
	gloveMm: number,
	surface = new SurfaceDistance(mesh)
): ShellOpening {
	if (!(gloveMm > 0 && gloveMm < Infinity)) {
		throw new RangeError(`gloveMm is ${gloveMm}; accepted: above 0`);
	}
	const samples = offsetSamples(surface, gloveMm);
	const total = samples.areasMm2.reduce((sum, mm2) => sum + mm2, 0);
	const few = fewerSamples(samples, SEARCH_SAMPLES);
	const tried = upwardDirections(32, 16);
	const drawn = [...tried, leastFacing(few, tried)].map((direction): Drawn => ({
		direction,
		locked: lockedSamples(mesh, few, direction, { offsetMm: gloveMm, columns: COARSE_COLUMNS })
	}));
	const direction = leastLocking(few, drawn, total);
	const locked = lockedSamples(mesh, samples, direction, {
		offsetMm: gloveMm,
		columns: FINE_COLUMNS
	});
	const lockedMm2 = markedAreaMm2(samples, locked);
	const isFree = lockedMm2 <= NOISE_FRACTION * total;
	const lockedTriangles = new Uint8Array(samples.mesh.triangles.length / 3);
	locked.forEach((mark, i) => (lockedTriangles[samples.triangleOf[i]!] = mark));
	const parted = isFree ? null : partedShell(few, drawn, NOISE_FRACTION * total);
	return {
		isFree,
		direction,
		lockedCm2: lockedMm2 / 100,
		lockedFraction: total > 0 ? lockedMm2 / total : 0,
		mesh: samples.mesh,
		lockedTriangles,
		parted,
		thirdOutlines: parted?.third ? thirdOutlines(mesh, samples, parted, gloveMm) : [],
		freeingGloveMm: isFree ? gloveMm : freeingGlove(surface, gloveMm, direction)
	};
}

function leastLocking(samples: OffsetSamples, drawn: readonly Drawn[], total: number): Vec3 {
	const areas = drawn.map(({ locked }) => markedAreaMm2(samples, locked));
	const least = Math.min(...areas);
	// The first is straight up: it stays unless another is clearly better.
	return areas[0]! <= least + NOISE_FRACTION * total
		? drawn[0]!.direction
		: drawn[areas.indexOf(least)]!.direction;
}

function partedShell(
	samples: OffsetSamples,
	drawn: readonly Drawn[],
	noiseMm2: number
): PartedShell | null {
	const halves = bestParting(samples, drawn, 2);
	if (halves === null || halves.lockedMm2 <= noiseMm2) return halves;
	const three = bestParting(samples, drawn, 3);
	return three !== null && three.lockedMm2 < halves.lockedMm2 - noiseMm2 ? three : halves;
}

function thirdOutlines(
	mesh: Mesh,
	samples: OffsetSamples,
	parted: PartedShell,
	offsetMm: number
): number[][] {
	const lockedIn = (direction: Vec3): Uint8Array =>
		lockedSamples(mesh, samples, direction, { offsetMm, columns: FINE_COLUMNS });
	const [first, second] = parted.directions.map(lockedIn) as [Uint8Array, Uint8Array];
	const third = lockedIn(parted.third!.direction);
	const marks = new Map<number, boolean>();
	for (let i = 0; i < samples.count; i += 1) {
		const locked = { first: first[i] === 1, second: second[i] === 1, third: third[i] === 1 };
		const point = vertexAt({ positions: samples.points }, i);
		marks.set(samples.triangleOf[i]!, isOfThird(parted, point, locked));
	}
	return patchOutlines(samples.mesh, marks);
}

function freeingGlove(surface: SurfaceDistance, gloveMm: number, direction: Vec3): number | null {
	const isFree = (offsetMm: number): boolean => {
		const samples = offsetSamples(surface, offsetMm);
		const locked = lockedSamples(surface.mesh, samples, direction, {
			offsetMm,
			columns: FINE_COLUMNS
		});
		const total = samples.areasMm2.reduce((sum, mm2) => sum + mm2, 0);
		return markedAreaMm2(samples, locked) <= NOISE_FRACTION * total;
	};
	const first = THICKER.findIndex((times) => isFree(gloveMm * times));
	if (first < 0) return null;
	let [locks, frees] = [gloveMm * (THICKER[first - 1] ?? 1), gloveMm * THICKER[first]!];
	while (frees - locks > TO_MM) {
		const between = (locks + frees) / 2;
		if (isFree(between)) frees = between;
		else locks = between;
	}
	return frees;
}
