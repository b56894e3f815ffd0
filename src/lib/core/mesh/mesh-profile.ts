import type { Bounds } from './measures';
import type { Mesh } from './mesh';
import { sectionOf, uprightPlane, type Outline } from './section';
import { simplified } from './simplify-line';

/** As many corners as a small picture can show. A choice. */
const MOST_POINTS = 240;

/**
 * Outline of a placed mesh over its middle, from the left foot over the top to the right foot, undercuts
 * and all. What stands beside it on the board follows to its right; hollows within are left out.
 */
export function meshProfile(mesh: Mesh, { min, max }: Bounds): { xMm: number; yMm: number }[] {
	const plane = uprightPlane({ xMm: 0, yMm: (min[1] + max[1]) / 2, turnDeg: 0 });
	const onBoardMm = Math.max(1e-6, 1e-4 * (max[2] - min[2]));
	const bodies = sectionOf(mesh, plane)
		.map((ring) => overTheTop(ring, onBoardMm))
		.filter((line) => line !== null)
		.sort((a, b) => a[0]!.xMm - b[0]!.xMm);
	const line = bodies.filter((body, i) => i === 0 || isBeside(bodies[i - 1]!, body)).flat();
	if (line.length < 3) return boxOutline({ min, max });
	return simplified(line, MOST_POINTS).map(({ xMm, yMm }) => ({ xMm, yMm: Math.max(0, yMm) }));
}

/** A ring from its leftmost foot over the top to its rightmost one; null when it hangs in the air or is a hole. */
function overTheTop(ring: Outline, onBoardMm: number): Outline | null {
	// Solid lies to the left, so that going backward is going over the top.
	const back = ring.toReversed();
	const feet = back.map((_, i) => i).filter((i) => back[i]!.yMm <= onBoardMm);
	if (feet.length === 0 || areaOf(ring) <= 0) return null;
	const left = feet.reduce((best, i) => (back[i]!.xMm < back[best]!.xMm ? i : best));
	const right = feet.reduce((best, i) => (back[i]!.xMm > back[best]!.xMm ? i : best));
	const steps = (right - left + back.length) % back.length;
	const line = Array.from({ length: steps + 1 }, (_, k) => back[(left + k) % back.length]!);
	return line.length < 3 ? null : line;
}

function isBeside(left: Outline, right: Outline): boolean {
	const reach = left.reduce((most, { xMm }) => Math.max(most, xMm), -Infinity);
	return right.every(({ xMm }) => xMm >= reach);
}

/** Positive when the ring goes round counterclockwise. */
function areaOf(ring: Outline): number {
	return ring.reduce((sum, { xMm, yMm }, i) => {
		const next = ring[(i + 1) % ring.length]!;
		return sum + (xMm * next.yMm - next.xMm * yMm) / 2;
	}, 0);
}

function boxOutline({ min, max }: Bounds): { xMm: number; yMm: number }[] {
	const [left, right, top] = [min[0], max[0], max[2]];
	return [
		{ xMm: left, yMm: 0 },
		{ xMm: left, yMm: top },
		{ xMm: right, yMm: top },
		{ xMm: right, yMm: 0 }
	];
}
