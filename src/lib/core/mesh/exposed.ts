import type { Mesh } from './mesh';
import { shellsOf } from './shells';
import { lyingTriangles } from './standing';
import { areaNormals } from './triangle-normals';

/** What the brush meets on a placed mesh. */
export interface Exposed {
	/** Area to be covered: without the faces on the board and without closed hollows. */
	exposedAreaCm2: number;
	/** Area of the faces that lie on the board. */
	footprintCm2: number;
	/** Walls of hollows that have no opening: no brush reaches them. */
	enclosedAreaCm2: number;
	/** Steepest slope that at least a thousandth of the area has, degrees from the board: 90 upright, more is undercut. */
	steepestWallDeg: number;
	/** Area by slope: 0 to 5°, 5 to 10° … 175 to 180° from facing up. */
	slopeAreasCm2: Float64Array;
}

const BIN_DEG = 0.1;
const BINS = 1800;
/** Triangles this small a part of the area are noise of the mesh, no wall. A choice. */
const NOTICED_FRACTION = 1e-3;

/** Areas of a mesh that lies on the board, millimeters, facing outward. */
export function exposedOf(mesh: Mesh): Exposed {
	const normals = areaNormals(mesh);
	const lying = lyingTriangles(mesh);
	const { shellOf, shells } = shellsOf(mesh);
	const bins = new Float64Array(BINS + 1);
	let [exposed, footprint, enclosed] = [0, 0, 0];
	for (let t = 0; t < lying.length; t += 1) {
		const [x, y, z] = [normals[3 * t]!, normals[3 * t + 1]!, normals[3 * t + 2]!];
		const cm2 = Math.hypot(x, y, z) / 200;
		if (cm2 === 0) continue;
		if (shells[shellOf[t]!]!.isHollow) enclosed += cm2;
		else if (lying[t]) footprint += cm2;
		else {
			exposed += cm2;
			const slopeDeg = (Math.atan2(Math.hypot(x, y), z) * 180) / Math.PI;
			bins[Math.round(slopeDeg / BIN_DEG)]! += cm2;
		}
	}
	return {
		exposedAreaCm2: exposed,
		footprintCm2: footprint,
		enclosedAreaCm2: enclosed,
		steepestWallDeg: steepestDeg(bins, exposed),
		slopeAreasCm2: Float64Array.from({ length: 36 }, (_, i) =>
			bins.subarray(50 * i, i === 35 ? undefined : 50 * (i + 1)).reduce((sum, cm2) => sum + cm2, 0)
		)
	};
}

function steepestDeg(bins: Float64Array, exposed: number): number {
	let above = 0;
	for (let bin = BINS; bin > 0; bin -= 1) {
		above += bins[bin]!;
		if (above > exposed * NOTICED_FRACTION) return bin * BIN_DEG;
	}
	return 0;
}
