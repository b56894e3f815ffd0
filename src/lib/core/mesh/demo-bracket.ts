import { loft, type LoftRing } from './loft';
import type { Mesh } from './mesh';

const SIDES = 240;
const LEAVES = 5;

/**
 * A carved bracket lying on its back: a shield with five lobes, a rim, and leaves that rise to a boss,
 * with V-cuts between them.
 */
export function demoBracket(): Mesh {
	const outline = (angle: number): number =>
		64 + 9 * Math.cos(LEAVES * angle) + 16 * Math.cos(angle) ** 2 * Math.sign(Math.cos(angle));
	const flat = (scale: number, z: number): LoftRing => ({
		radiusAt: (angle) => scale * outline(angle),
		zAt: () => z
	});
	const carved = (scale: number, z: number, cut: number): LoftRing => ({
		radiusAt: (angle) => scale * outline(angle),
		zAt: (angle) => z - cut * Math.abs(Math.sin(2.5 * angle)) ** 8
	});
	return loft(
		[
			flat(0, 0),
			flat(1, 0),
			flat(0.99, 12),
			flat(0.97, 14),
			flat(0.9, 14),
			flat(0.87, 9),
			flat(0.82, 9),
			carved(0.78, 12, 2),
			carved(0.65, 19, 6),
			carved(0.5, 25, 9),
			carved(0.36, 29, 8),
			carved(0.24, 30, 3),
			flat(0.2, 33),
			flat(0.14, 38),
			flat(0.06, 40),
			flat(0, 40.5)
		],
		SIDES
	);
}
