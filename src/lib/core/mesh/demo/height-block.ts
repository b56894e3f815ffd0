import type { Mesh } from '../mesh';

export interface HeightBlock {
	lengthMm: number;
	widthMm: number;
	/** Cells along length and width. */
	cells: readonly [number, number];
	/** Height above the board at x, y from the middle, mm; above 0 everywhere. */
	heightMm: (xMm: number, yMm: number) => number;
}

/** A closed block with a flat underside at z = 0 and a top of the given heights. */
export function heightBlock({ lengthMm, widthMm, cells: [nx, ny], heightMm }: HeightBlock): Mesh {
	const layer = (nx + 1) * (ny + 1);
	const positions = new Float64Array(6 * layer);
	const triangles: number[] = [];
	const at = (i: number, j: number): number => j * (nx + 1) + i;
	for (let j = 0; j <= ny; j += 1) {
		for (let i = 0; i <= nx; i += 1) {
			const [x, y] = [(i / nx - 0.5) * lengthMm, (j / ny - 0.5) * widthMm];
			positions.set([x, y, heightMm(x, y)], 3 * at(i, j));
			positions.set([x, y, 0], 3 * (layer + at(i, j)));
			if (i === nx || j === ny) continue;
			const [a, b, c, d] = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
			triangles.push(a, b, c, a, c, d);
			triangles.push(layer + a, layer + c, layer + b, layer + a, layer + d, layer + c);
		}
	}
	const wall = (a: number, b: number): void => {
		triangles.push(layer + a, layer + b, b, layer + a, b, a);
	};
	for (let i = 0; i < nx; i += 1) {
		wall(at(i, 0), at(i + 1, 0));
		wall(at(i + 1, ny), at(i, ny));
	}
	for (let j = 0; j < ny; j += 1) {
		wall(at(nx, j), at(nx, j + 1));
		wall(at(0, j + 1), at(0, j));
	}
	return { positions, triangles: Uint32Array.from(triangles) };
}
