import { grownField, heightFieldOf, leastHeightNear } from './height-field';
import { measuresOf } from './measures';
import { vertexAt, type Mesh, type Vec3 } from './mesh';
import type { OffsetSamples } from './offset-samples';
import { dot } from './vector';

/** A face may lean inward by this much, a bit over a degree, before it counts as an undercut: walls without draft are drawn. A choice. */
const LEAN = 0.02;

/** Columns across the pattern: finer finds shallower shadows and takes longer. */
export interface LockedOptions {
	offsetMm: number;
	columns: number;
}

/** For each sample whether it is locked when a rigid shell is drawn along `direction`: 1 when so. */
export function lockedSamples(
	mesh: Mesh,
	samples: OffsetSamples,
	direction: Vec3,
	{ offsetMm, columns }: LockedOptions
): Uint8Array {
	const { min, max } = measuresOf(mesh).bounds;
	const size = Math.max(...max.map((high, axis) => high - min[axis]!));
	const sideMm = (size + 2 * offsetMm) / columns;
	const field = grownField(heightFieldOf(mesh, direction, sideMm, offsetMm), offsetMm);
	const locked = new Uint8Array(samples.count);
	for (let i = 0; i < samples.count; i += 1) {
		const point = vertexAt({ positions: samples.points }, i);
		const normal = vertexAt({ positions: samples.normals }, i);
		const isTurnedAway = dot(normal, direction) < -LEAN;
		const isShadowed = leastHeightNear(field, point) > dot(point, direction) + 2 * sideMm;
		locked[i] = isTurnedAway || isShadowed ? 1 : 0;
	}
	return locked;
}

/** Area of the samples that are marked, mm². */
export function markedAreaMm2({ areasMm2 }: OffsetSamples, marks: Uint8Array): number {
	return areasMm2.reduce((sum, mm2, i) => sum + (marks[i] ? mm2 : 0), 0);
}
