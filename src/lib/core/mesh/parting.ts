import { vertexAt, type Vec3 } from './mesh';
import type { OffsetSamples } from './offset-samples';
import type { Plane } from './section';
import { dot, lengthOf, subtract, unitOf } from './vector';

/** A shell in two halves that part at a plane, and if need be a piece of its own for what both leave locked. */
export interface PartedShell {
	plane: Plane;
	/** Directions in which the halves leave: first the one on the side the plane's normal points to. */
	directions: [Vec3, Vec3];
	/** Null when two are enough or a third frees nothing more. */
	third: ThirdPiece | null;
	/** Area still locked, mm². */
	lockedMm2: number;
}

/** A piece of its own over what each half would leave locked on its side, and this one frees. */
export interface ThirdPiece {
	direction: Vec3;
	/** The place of the shell nearest to the middle of that area. */
	at: Vec3;
	areaMm2: number;
}

/** Whether a point of the shell belongs to the third piece, by what locks it in each direction. */
export function isOfThird(
	{ plane, third }: PartedShell,
	point: Vec3,
	locked: { first: boolean; second: boolean; third: boolean }
): boolean {
	if (!third || locked.third) return false;
	return dot(plane.normal, point) >= plane.offsetMm ? locked.first : locked.second;
}

export interface Drawn {
	direction: Vec3;
	/** For each sample whether it is locked in this direction. */
	locked: Uint8Array;
}

/** A plane that lies flat must free this much more of the area than an upright one: it is hard to lay up. A choice. */
const LEANING_COST = 0.1;
/** Pairs of halves tried with a third piece. */
const TRIED_WITH_THIRD = 6;

/**
 * The parting at a plane that leaves the least area locked, in two halves or with a third piece;
 * null when no two directions part.
 */
export function bestParting(
	samples: OffsetSamples,
	drawn: readonly Drawn[],
	parts: 2 | 3
): PartedShell | null {
	const pairs: { first: Drawn; second: Drawn; halves: PartedShell }[] = [];
	for (let a = 0; a < drawn.length; a += 1) {
		for (let b = a + 1; b < drawn.length; b += 1) {
			const [first, second] = [drawn[a]!, drawn[b]!];
			// Halves that leave almost alike are one half.
			if (dot(first.direction, second.direction) > 0.3) continue;
			pairs.push({ first, second, halves: cutAt(samples, first, second, null) });
		}
	}
	const total = samples.areasMm2.reduce((sum, mm2) => sum + mm2, 0);
	const cost = ({ lockedMm2, plane }: PartedShell): number =>
		lockedMm2 + LEANING_COST * total * Math.abs(plane.normal[2]);
	pairs.sort((p, q) => cost(p.halves) - cost(q.halves));
	const found = pairs
		.slice(0, parts === 3 ? TRIED_WITH_THIRD : 1)
		.flatMap(({ first, second, halves }) => [
			halves,
			...(parts === 3 ? drawn.map((third) => cutAt(samples, first, second, third)) : [])
		]);
	return found.reduce<PartedShell | null>(
		(best, one) => (best === null || cost(one) < cost(best) - 1e-6 ? one : best),
		null
	);
}

const STEPS = 64;

function cutAt(
	samples: OffsetSamples,
	first: Drawn,
	second: Drawn,
	third: Drawn | null
): PartedShell {
	const normal = unitOf(subtract(first.direction, second.direction));
	const { points } = samples;
	let [low, high] = [Infinity, -Infinity];
	const along = Float64Array.from({ length: samples.count }, (_, i) => {
		const at =
			points[3 * i]! * normal[0] + points[3 * i + 1]! * normal[1] + points[3 * i + 2]! * normal[2];
		low = Math.min(low, at);
		high = Math.max(high, at);
		return at;
	});
	// What is locked above and below each of the cuts, summed from either end.
	const [above, below] = [new Float64Array(STEPS + 1), new Float64Array(STEPS + 1)];
	for (let i = 0; i < samples.count; i += 1) {
		if (third && !third.locked[i]) continue;
		const step = Math.min(STEPS - 1, Math.floor(((along[i]! - low) / (high - low || 1)) * STEPS));
		if (first.locked[i]) above[step]! += samples.areasMm2[i]!;
		if (second.locked[i]) below[step + 1]! += samples.areasMm2[i]!;
	}
	for (let step = STEPS - 1; step >= 0; step -= 1) above[step]! += above[step + 1]!;
	for (let step = 1; step <= STEPS; step += 1) below[step]! += below[step - 1]!;
	let least = 0;
	const cost = (step: number): number => above[step]! + below[step]!;
	// Of equal cuts the one nearest to the middle.
	for (let step = 1; step <= STEPS; step += 1) {
		const isNearer = Math.abs(step - STEPS / 2) < Math.abs(least - STEPS / 2);
		if (cost(step) < cost(least) - 1e-6 || (cost(step) <= cost(least) + 1e-6 && isNearer))
			least = step;
	}
	const offsetMm = low + ((high - low) * least) / STEPS;
	const isFreedByThird = (i: number): boolean =>
		third !== null &&
		!third.locked[i] &&
		(along[i]! >= offsetMm ? first.locked[i]! : second.locked[i]!) === 1;
	return {
		plane: { normal, offsetMm },
		directions: [first.direction, second.direction],
		third: third && thirdPiece(samples, third.direction, isFreedByThird),
		lockedMm2: cost(least)
	};
}

function thirdPiece(
	{ count, points, areasMm2 }: OffsetSamples,
	direction: Vec3,
	isIn: (sample: number) => boolean
): ThirdPiece | null {
	const within = Array.from({ length: count }, (_, i) => i).filter(isIn);
	const pointAt = (i: number): Vec3 => vertexAt({ positions: points }, i);
	const areaMm2 = within.reduce((sum, i) => sum + areasMm2[i]!, 0);
	if (areaMm2 === 0) return null;
	const meanAlong = (axis: number): number =>
		within.reduce((sum, i) => sum + areasMm2[i]! * points[3 * i + axis]!, 0) / areaMm2;
	const middle: Vec3 = [meanAlong(0), meanAlong(1), meanAlong(2)];
	const away = (i: number): number => lengthOf(subtract(pointAt(i), middle));
	const nearest = within.reduce((best, i) => (away(i) < away(best) ? i : best));
	return { direction, at: pointAt(nearest), areaMm2 };
}
