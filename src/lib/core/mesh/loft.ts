import type { Mesh } from './mesh';

/** One ring of a loft, by the angle about the z axis. */
export interface LoftRing {
	radiusAt: (angle: number) => number;
	zAt: (angle: number) => number;
}

/**
 * A closed body through rings from its bottom to its top, outward. First and last ring have no radius: they are
 * single points.
 */
export function loft(rings: readonly LoftRing[], sides: number): Mesh {
	const between = rings.slice(1, -1);
	const positions = new Float64Array(3 * (between.length * sides + 2));
	const put = ({ radiusAt, zAt }: LoftRing, angle: number, at: number): void => {
		const r = radiusAt(angle);
		positions.set([r * Math.cos(angle), r * Math.sin(angle), zAt(angle)], 3 * at);
	};
	const [bottom, top] = [between.length * sides, between.length * sides + 1];
	put(rings[0]!, 0, bottom);
	put(rings.at(-1)!, 0, top);
	const triangles: number[] = [];
	between.forEach((ring, k) => {
		for (let i = 0; i < sides; i += 1) {
			put(ring, (2 * Math.PI * i) / sides, k * sides + i);
			const [a, b] = [k * sides + i, k * sides + ((i + 1) % sides)];
			if (k === 0) triangles.push(bottom, b, a);
			if (k === between.length - 1) triangles.push(top, a, b);
			else triangles.push(a, b, b + sides, a, b + sides, a + sides);
		}
	});
	return { positions, triangles: Uint32Array.from(triangles) };
}
