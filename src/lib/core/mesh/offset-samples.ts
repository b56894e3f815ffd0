import { coatedVertices } from './coated-vertices';
import { measuresOf } from './measures';
import type { Mesh } from './mesh';
import { refinedMesh } from './refine';
import type { SurfaceDistance } from './surface-distance';
import { areaNormals } from './triangle-normals';

/** Points spread over the outer face of a coat, each with the part of the pattern below it. */
export interface OffsetSamples {
	count: number;
	points: Float64Array;
	normals: Float64Array;
	areasMm2: Float64Array;
	/** The triangle of `mesh` under each point. */
	triangleOf: Uint32Array;
	/** The pattern in triangles as fine as the points. */
	mesh: Mesh;
}

/** Enough that a twentieth of the pattern's length is met many times; fewer for searches. */
const MOST_SAMPLES = 40_000;

/**
 * Samples of the surface at `offsetMm` from a placed pattern, one over each triangle of a finer mesh.
 * Points that a neighbor's coat has buried are left out; roundings over edges are not sampled.
 */
export function offsetSamples(surface: SurfaceDistance, offsetMm: number): OffsetSamples {
	const { min, max } = measuresOf(surface.mesh).bounds;
	const size = Math.max(...max.map((high, axis) => high - min[axis]!));
	const { mesh } = refinedMesh(surface.mesh, size / 50, MOST_SAMPLES);
	const { isCoated } = coatedVertices(mesh);
	const face = areaNormals(mesh);
	const triangles = Array.from(isCoated.keys()).filter((t) => isCoated[t]);
	// Of a very fine mesh every so many triangles do.
	const stride = Math.max(1, Math.ceil(triangles.length / MOST_SAMPLES));
	const samples = {
		points: [] as number[],
		normals: [] as number[],
		areas: [] as number[],
		of: [] as number[]
	};
	for (let k = 0; k < triangles.length; k += stride) {
		const t = triangles[k]!;
		const n = [face[3 * t]!, face[3 * t + 1]!, face[3 * t + 2]!] as const;
		const size2 = Math.hypot(...n);
		if (size2 === 0) continue;
		const [x, y, z] = [0, 1, 2].map((axis) => {
			const sum = [0, 1, 2].reduce(
				(s, c) => s + mesh.positions[3 * mesh.triangles[3 * t + c]! + axis]!,
				0
			);
			return sum / 3 + (offsetMm * n[axis]!) / size2;
		}) as [number, number, number];
		if (z < 0 || (offsetMm > 0 && surface.at(x, y, z) < offsetMm * 0.98)) continue;
		samples.points.push(x, y, z);
		samples.normals.push(n[0] / size2, n[1] / size2, n[2] / size2);
		samples.areas.push((stride * size2) / 2);
		samples.of.push(t);
	}
	return {
		count: samples.areas.length,
		points: Float64Array.from(samples.points),
		normals: Float64Array.from(samples.normals),
		areasMm2: Float64Array.from(samples.areas),
		triangleOf: Uint32Array.from(samples.of),
		mesh
	};
}

/** Every so many of the samples, at most `count`, standing for all of them. */
export function fewerSamples(samples: OffsetSamples, count: number): OffsetSamples {
	const stride = Math.max(1, Math.ceil(samples.count / count));
	const kept = Array.from({ length: Math.ceil(samples.count / stride) }, (_, k) => k * stride);
	return {
		...samples,
		count: kept.length,
		points: Float64Array.from(kept.flatMap((i) => [...samples.points.subarray(3 * i, 3 * i + 3)])),
		normals: Float64Array.from(
			kept.flatMap((i) => [...samples.normals.subarray(3 * i, 3 * i + 3)])
		),
		areasMm2: Float64Array.from(kept, (i) => samples.areasMm2[i]! * stride),
		triangleOf: Uint32Array.from(kept, (i) => samples.triangleOf[i]!)
	};
}
