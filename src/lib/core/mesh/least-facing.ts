import type { Vec3 } from './mesh';
import type { OffsetSamples } from './offset-samples';
import { acrossTo, unitOf } from './vector';

const TURNS_DEG = [12, 6, 3, 1.5, 0.8, 0.4, 0.2];
const AROUND = 8;

/**
 * The upward direction that the least surface faces away from, by area and by how far it faces away.
 *
 * The locked area itself jumps by a whole wall at each turn, and two parallel walls leave only one
 * way out; this sum is smooth and leads there.
 *
 * @param starts - unit vectors to begin from
 */
export function leastFacing(samples: OffsetSamples, starts: readonly Vec3[]): Vec3 {
	let best = starts
		.map((direction) => ({ direction, away: facingAway(samples, direction) }))
		.reduce((least, one) => (one.away < least.away ? one : least));
	for (const turnDeg of TURNS_DEG) {
		// Twice at each step, so that a way as long as two steps is gone as well.
		for (let round = 0; round < 2; round += 1) {
			best = turned(best.direction, turnDeg)
				.map((direction) => ({ direction, away: facingAway(samples, direction) }))
				.reduce((least, one) => (one.away < least.away ? one : least), best);
		}
	}
	return best.direction;
}

function turned([x, y, z]: Vec3, turnDeg: number): Vec3[] {
	const by = Math.tan((turnDeg * Math.PI) / 180);
	const [u, v] = acrossTo([x, y, z]);
	return Array.from({ length: AROUND }, (_, k): Vec3 => {
		const angle = (2 * Math.PI * k) / AROUND;
		const [c, s] = [by * Math.cos(angle), by * Math.sin(angle)];
		return unitOf([
			x + c * u[0] + s * v[0],
			y + c * u[1] + s * v[1],
			Math.max(0, z + c * u[2] + s * v[2])
		]);
	});
}

function facingAway({ count, normals, areasMm2 }: OffsetSamples, [x, y, z]: Vec3): number {
	let sum = 0;
	for (let i = 0; i < count; i += 1) {
		const facing = normals[3 * i]! * x + normals[3 * i + 1]! * y + normals[3 * i + 2]! * z;
		if (facing < 0) sum -= facing * areasMm2[i]!;
	}
	return sum;
}
