import type { Mesh } from '../mesh';

/**
 * A closed body of revolution about the z axis.
 *
 * @param profile - [radius, height] pairs, mm, closed by itself, counterclockwise with the radius to the right; radii above 0
 */
export function lathe(profile: readonly (readonly [number, number])[], sides: number): Mesh {
	const rows = profile.length;
	const positions = new Float64Array(3 * rows * sides);
	const triangles = new Uint32Array(6 * rows * sides);
	for (let s = 0; s < sides; s += 1) {
		const angle = (2 * Math.PI * s) / sides;
		profile.forEach(([radius, height], row) => {
			positions.set(
				[radius * Math.cos(angle), radius * Math.sin(angle), height],
				3 * (s * rows + row)
			);
			const next = ((s + 1) % sides) * rows;
			const [a, b] = [s * rows + row, s * rows + ((row + 1) % rows)];
			const [c, d] = [next + row, next + ((row + 1) % rows)];
			triangles.set([a, c, d, a, d, b], 6 * (s * rows + row));
		});
	}
	return { positions, triangles };
}
