import type { Mesh } from '../mesh';
import { heightBlock } from './height-block';

const SIDE = 120;
const FIELD = 16;
const RELIEF = 6;

/** An invented tile, 120 mm square: a rosette of eight petals in a frame, with a narrow deep groove between. */
export function reliefTile(): Mesh {
	return heightBlock({ lengthMm: SIDE, widthMm: SIDE, cells: [150, 150], heightMm });
}

function heightMm(x: number, y: number): number {
	const edge = SIDE / 2 - Math.max(Math.abs(x), Math.abs(y));
	// The frame, then a groove of 2.4 mm at the top and 0.8 mm at the bottom, 7 mm deep, then the field.
	if (edge < 8) return FIELD + Math.min(4, edge);
	if (edge < 9.5) return FIELD - 7;
	const radius = Math.hypot(x, y);
	const petal = 0.5 + 0.5 * Math.cos(8 * Math.atan2(y, x));
	const leaf = petal * Math.exp(-(((radius - 27) / 13) ** 2));
	const boss = radius < 11 ? Math.sqrt(Math.max(0, 1 - (radius / 11) ** 2)) : 0;
	const grain = 0.15 * Math.sin(x * 1.7) * Math.sin(y * 1.3);
	return FIELD + RELIEF * leaf + 5 * boss + grain;
}
