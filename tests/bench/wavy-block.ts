import { heightBlock } from '../../src/lib/core/mesh/demo/height-block';
import type { Mesh } from '../../src/lib/core/mesh/mesh';

/** Six coats and a shell, mm. */
export const LAYERS_MM = [0.8, 1, 1, 1.2, 1.5, 1.5, 10];

/** A wavy block of about 4 n² triangles, 300 mm long. */
export function wavyBlock(n: number): Mesh {
	return heightBlock({
		lengthMm: 300,
		widthMm: 200,
		cells: [n, n],
		heightMm: (x, y) => 60 + 12 * Math.sin(x / 14) * Math.cos(y / 11) + 2 * Math.sin(x / 2.5)
	});
}
