import { demoBracket } from './demo-bracket';
import type { Mesh } from './mesh';
import { loft } from './loft';

export const DEMO_PATTERNS = ['tile', 'sheave', 'bracket'] as const;
export type DemoPattern = (typeof DEMO_PATTERNS)[number];

/** What the invented patterns are called, and the file each would come as. */
export const DEMO_NAMES: Record<DemoPattern, { title: string; file: string }> = {
	tile: { title: 'Relief tile with two grooves', file: 'demo-relief-tile.stl' },
	sheave: { title: 'Stepped sheave with a hollow flank', file: 'demo-stepped-sheave.stl' },
	bracket: { title: 'Carved bracket', file: 'demo-carved-bracket.stl' }
};

/** An invented pattern in millimeters, closed and outward, its face for the board at z = 0. */
export function demoPattern(name: DemoPattern): Mesh {
	if (name === 'tile') return tile();
	return name === 'sheave' ? sheave() : demoBracket();
}

const TILE = { lengthMm: 180, widthMm: 120, columns: 180, rows: 120 };

/** A tile of 180 × 120 mm with a rosette in relief, between two deep grooves of 2.4 and 5 mm. */
function tile(): Mesh {
	const { lengthMm, widthMm, columns, rows } = TILE;
	const at = (i: number, j: number) => j * (columns + 1) + i;
	const count = (columns + 1) * (rows + 1);
	const positions = new Float64Array(3 * 2 * count);
	for (let j = 0; j <= rows; j += 1) {
		for (let i = 0; i <= columns; i += 1) {
			const x = (i / columns - 0.5) * lengthMm;
			const y = (j / rows - 0.5) * widthMm;
			positions.set([x, y, tileTop(x, y)], 3 * at(i, j));
			positions.set([x, y, 0], 3 * (count + at(i, j)));
		}
	}
	const triangles: number[] = [];
	const quad = (a: number, b: number, c: number, d: number) => triangles.push(a, b, c, a, c, d);
	for (let j = 0; j < rows; j += 1) {
		for (let i = 0; i < columns; i += 1) {
			const [a, b, c, d] = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
			quad(a, b, c, d);
			quad(count + a, count + d, count + c, count + b);
		}
	}
	const side = (a: number, b: number) => quad(count + a, count + b, b, a);
	for (let i = 0; i < columns; i += 1) {
		side(at(i, 0), at(i + 1, 0));
		side(at(i + 1, rows), at(i, rows));
	}
	for (let j = 0; j < rows; j += 1) {
		side(at(columns, j), at(columns, j + 1));
		side(at(0, j + 1), at(0, j));
	}
	return { positions, triangles: Uint32Array.from(triangles) };
}

function tileTop(x: number, y: number): number {
	const r = Math.hypot(x, y);
	const petal = Math.cos(8 * Math.atan2(y, x));
	const rosette = r < 46 ? (5 + 2.5 * petal) * Math.cos((Math.PI * r) / 92) ** 0.5 : 0;
	const groove = (at: number, width: number, depth: number): number => {
		const off = Math.abs(x - at) - width / 2;
		return off < 0 ? depth : off < 1 ? depth * (1 - off) : 0;
	};
	return 16 + rosette - groove(-68, 2, 7) - groove(68, 4.5, 6);
}

/** Outline of the sheave: radius and height; the flank between 20 and 40 mm falls back by 6 mm. */
const SHEAVE: readonly (readonly [number, number])[] = [
	[0, 0],
	[70, 0],
	[70, 18],
	[58, 20],
	[52, 30],
	[58, 40],
	[58, 48],
	[36, 48],
	[36, 66],
	[24, 66],
	[22, 74],
	[0, 74]
];

/** A stepped round with a hollow flank: an undercut all the way around. */
function sheave(): Mesh {
	return loft(
		SHEAVE.map(([radius, z]) => ({ radiusAt: () => radius, zAt: () => z })),
		144
	);
}
