import { lockedSamples } from './locked';
import { measuresOf } from './measures';
import { vertexAt, type Vec3 } from './mesh';
import { offsetSamples } from './offset-samples';
import { pointOnPlane, sectionOf, type Outline, type Plane } from './section';
import type { SurfaceDistance } from './surface-distance';

/**
 * Where on the foot of the pattern to start peeling the glove: as far as can be from undercuts, and
 * without any, at the point farthest from the middle. Null when the pattern meets no board.
 */
export function peelStart(surface: SurfaceDistance): Vec3 | null {
	const { mesh } = surface;
	const { min, max } = measuresOf(mesh).bounds;
	const plane: Plane = { normal: [0, 0, 1], offsetMm: Math.min(0.5, max[2] / 2) };
	const foot = outermost(sectionOf(mesh, plane)).map((point) => pointOnPlane(plane, point));
	const samples = offsetSamples(surface, 0);
	const locked = lockedSamples(mesh, samples, [0, 0, 1], { offsetMm: 0, columns: 200 });
	const undercuts = Array.from(locked.keys())
		.filter((i) => locked[i])
		.map((i) => vertexAt({ positions: samples.points }, i));
	// A few hundred tell as much as all of them.
	const stride = Math.max(1, Math.floor(undercuts.length / 400));
	const far = undercuts.filter((_, i) => i % stride === 0);
	const middle: Vec3 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, 0];
	const score = (p: Vec3): number =>
		far.length > 0
			? Math.min(...far.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2])))
			: Math.hypot(p[0] - middle[0], p[1] - middle[1]);
	return (
		foot
			.map((point) => ({ point, score: score(point) }))
			.reduce<{ point: Vec3; score: number } | null>(
				(best, one) => (best === null || one.score > best.score ? one : best),
				null
			)?.point ?? null
	);
}

/** The outline that takes most room: nobody starts to peel inside a hole. */
function outermost(rings: Outline[]): Outline {
	const width = (ring: Outline): number => {
		const xs = ring.map(({ xMm }) => xMm);
		return xs.reduce((a, b) => Math.max(a, b)) - xs.reduce((a, b) => Math.min(a, b));
	};
	return rings.reduce<Outline>(
		(best, ring) => (best.length === 0 || width(ring) > width(best) ? ring : best),
		[]
	);
}
