import { measuresOf } from './measures';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import { offsetSamples, type OffsetSamples } from './offset-samples';
import type { SurfaceDistance } from './surface-distance';

export interface Keying {
	/** How far the shell can slide on the glove, in the freest level direction, before it binds; Infinity when nothing stops it. */
	slideMm: number;
	/** How far it can turn about the upright axis before it binds, degrees. */
	turnDeg: number;
	/** Whether the pattern's own shape keys the two. */
	isKeyed: boolean;
	/** Places on the board for keys in the flange when it does not, mm; not symmetric, so that they fit one way only. */
	keysAt: Vec3[];
}

/** Rubber gives this much before a shell counts as stopped, mm; common practice, no source. */
const PLAY_MM = 0.5;
/** Steepest part of the area that stops a motion; less is a single bump. A choice. */
const STOPPING_FRACTION = 0.02;
/** Sliding or turning farther than this before it binds counts as not keyed, mm at the rim; a choice. */
const MOST_MM = 2;
const AROUND = 12;

/**
 * Whether shell and glove key each other by shape. A motion is stopped once the steepest fiftieth of
 * the surface has moved into the glove by 0.5 mm.
 *
 * @param gloveMm - thickness of the glove, mm
 * @param flangeMm - width of the flange, where keys can stand
 */
export function keyingOf(surface: SurfaceDistance, gloveMm: number, flangeMm: number): Keying {
	const samples = offsetSamples(surface, gloveMm);
	const { min, max } = measuresOf(surface.mesh).bounds;
	const slides = Array.from({ length: AROUND }, (_, i) => {
		const angle = (2 * Math.PI * i) / AROUND;
		const [x, y] = [Math.cos(angle), Math.sin(angle)];
		return PLAY_MM / steepest(samples, ([nx, ny]) => -(nx * x + ny * y));
	});
	const slideMm = Math.max(...slides);
	const [cx, cy] = areaCenter(samples);
	const turnRad = Math.max(
		...[1, -1].map(
			(sense) =>
				PLAY_MM / steepest(samples, ([nx, ny], [x, y]) => -sense * (ny * (x - cx) - nx * (y - cy)))
		)
	);
	const rimMm = Math.hypot(max[0] - min[0], max[1] - min[1]) / 2;
	const isKeyed = slideMm <= MOST_MM && turnRad * rimMm <= MOST_MM;
	return {
		slideMm,
		turnDeg: (turnRad * 180) / Math.PI,
		isKeyed,
		keysAt: isKeyed ? [] : keyPlaces(surface.mesh, gloveMm, flangeMm)
	};
}

/** How much the steepest fiftieth of the surface resists a motion, by the given measure; 0 when nothing does. */
function steepest(samples: OffsetSamples, resists: (normal: Vec3, point: Vec3) => number): number {
	const measured = Array.from({ length: samples.count }, (_, i) => ({
		by: resists(
			vertexAt({ positions: samples.normals }, i),
			vertexAt({ positions: samples.points }, i)
		),
		mm2: samples.areasMm2[i]!
	})).sort((a, b) => b.by - a.by);
	const total = measured.reduce((sum, { mm2 }) => sum + mm2, 0);
	let area = 0;
	for (const { by, mm2 } of measured) {
		area += mm2;
		// Facets of a round body catch a little when it is turned; that is the mesh and no key.
		if (area >= STOPPING_FRACTION * total) return by > 1e-3 ? by : 0;
	}
	return 0;
}

function areaCenter({ count, points, areasMm2 }: OffsetSamples): [number, number] {
	let [x, y, total] = [0, 0, 0];
	for (let i = 0; i < count; i += 1) {
		x += points[3 * i]! * areasMm2[i]!;
		y += points[3 * i + 1]! * areasMm2[i]!;
		total += areasMm2[i]!;
	}
	return total > 0 ? [x / total, y / total] : [0, 0];
}

/** Three corners of the flange's rectangle, the fourth left out: so the shell goes on one way only. */
function keyPlaces(mesh: Mesh, gloveMm: number, flangeMm: number): Vec3[] {
	const { min, max } = measuresOf(mesh).bounds;
	const out = gloveMm + flangeMm / 2;
	const [left, right, front, back] = [min[0] - out, max[0] + out, min[1] - out, max[1] + out];
	return [
		[left, front, 0],
		[right, front, 0],
		[right, back, 0]
	];
}
