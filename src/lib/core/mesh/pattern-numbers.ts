import type { MeshBody } from '../geometry/mesh-body';
import { layerVolumes } from './coat-volumes';
import { exposedOf } from './exposed';
import { footOf } from './foot';
import { measuresOf } from './measures';
import type { Mesh, Vec3 } from './mesh';
import { meshProfile } from './mesh-profile';
import type { SurfaceDistance } from './surface-distance';

/** The numbers of a pattern that need no offset. */
type PatternNumbers = Pick<
	MeshBody,
	| 'exposedAreaCm2'
	| 'volumeMl'
	| 'footprintCm2'
	| 'footLengthMm'
	| 'enclosedBoardCm2'
	| 'lengthMm'
	| 'widthMm'
	| 'heightMm'
	| 'steepestWallDeg'
	| 'profile'
>;

export interface MeasuredPattern {
	numbers: PatternNumbers;
	/** Walls of closed hollows, which no brush reaches. */
	enclosedAreaCm2: number;
	/** Center of mass, mm, the board at z = 0. */
	center: Vec3;
}

/** What a plan asks of a pattern, measured on a mesh in millimeters on the board. */
export function measuredPattern(mesh: Mesh): MeasuredPattern {
	const { signedVolume, bounds, center } = measuresOf(mesh);
	const exposed = exposedOf(mesh);
	const numbers: PatternNumbers = {
		exposedAreaCm2: exposed.exposedAreaCm2,
		footprintCm2: exposed.footprintCm2,
		steepestWallDeg: exposed.steepestWallDeg,
		volumeMl: signedVolume / 1000,
		lengthMm: bounds.max[0] - bounds.min[0],
		widthMm: bounds.max[1] - bounds.min[1],
		heightMm: bounds.max[2] - bounds.min[2],
		profile: meshProfile(mesh, bounds),
		...footOf(mesh)
	};
	return { numbers, enclosedAreaCm2: exposed.enclosedAreaCm2, center };
}

/** Distances at which volumes are computed, for coats and for coats with a shell. A choice. */
const COATS_MM = [1, 2, 4, 7, 11, 16];
const SHELL_MM = [26, 40];

/**
 * Volumes over the board out to offset surfaces from 1 to 40 mm, the coats' within 0.5 %.
 *
 * @throws RangeError when the mesh has no volume
 */
export function patternOffsets(mesh: Mesh, surface: SurfaceDistance): MeshBody['offsets'] {
	return [COATS_MM, SHELL_MM].flatMap((outers) => {
		const thicknesses = outers.map((outer, i) => outer - (outers[i - 1] ?? 0));
		let [volumeMl, errorMl] = [0, 0];
		return layerVolumes(mesh, thicknesses, surface).layers.map((layer) => {
			volumeMl += layer.volumeMl;
			errorMl += layer.errorMl;
			return { outerMm: layer.outerMm, volumeMl, errorMl };
		});
	});
}
