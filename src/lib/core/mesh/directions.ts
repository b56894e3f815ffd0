import type { Vec3 } from './mesh';

const GOLDEN = Math.PI * (3 - Math.sqrt(5));

/** Straight up, then `count` directions spread evenly over the upper half of the sphere, and `around` level ones. */
export function upwardDirections(count: number, around: number): Vec3[] {
	const spread = Array.from({ length: count }, (_, i): Vec3 => {
		const z = 1 - (i + 0.5) / count;
		const level = Math.sqrt(1 - z * z);
		return [level * Math.cos(GOLDEN * i), level * Math.sin(GOLDEN * i), z];
	});
	const level = Array.from({ length: around }, (_, i): Vec3 => {
		const angle = (2 * Math.PI * i) / around;
		return [Math.cos(angle), Math.sin(angle), 0];
	});
	return [[0, 0, 1], ...spread, ...level];
}
