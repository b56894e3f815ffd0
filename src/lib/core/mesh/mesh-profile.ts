import type { Bounds } from './measures';
import type { Mesh } from './mesh';
import { sectionOf, uprightPlane, type Outline } from './section';

type Point = Outline[number];

const COLUMNS = 240;

/**
 * Outline of a placed mesh over its middle, from the left foot over the top to the right foot: the
 * highest point above each of 241 places along the length.
 */
export function meshProfile(mesh: Mesh, { min, max }: Bounds): { xMm: number; yMm: number }[] {
	const rings = sectionOf(mesh, uprightPlane({ xMm: 0, yMm: (min[1] + max[1]) / 2, turnDeg: 0 }));
	const points = rings.flat();
	if (points.length < 3) return boxOutline({ min, max });
	const low = points.reduce((least, { xMm }) => Math.min(least, xMm), Infinity);
	const high = points.reduce((most, { xMm }) => Math.max(most, xMm), -Infinity);
	const tops = new Float64Array(COLUMNS + 1);
	const step = (high - low) / COLUMNS || 1;
	for (const ring of rings) {
		ring.forEach((from, i) => raise(tops, low, step, from, ring[(i + 1) % ring.length]!));
	}
	const line = [...tops].map((yMm, i) => ({ xMm: low + i * step, yMm }));
	return [{ xMm: low, yMm: 0 }, ...line.filter(turns), { xMm: high, yMm: 0 }];
}

function raise(tops: Float64Array, low: number, step: number, a: Point, b: Point): void {
	const [from, to] = a.xMm <= b.xMm ? [a, b] : [b, a];
	const run = to.xMm - from.xMm;
	const last = Math.min(COLUMNS, Math.floor((to.xMm - low) / step + 1e-9));
	for (let i = Math.max(0, Math.ceil((from.xMm - low) / step - 1e-9)); i <= last; i += 1) {
		const part = run > 0 ? Math.min(1, Math.max(0, (low + i * step - from.xMm) / run)) : 1;
		const up = from.yMm + part * (to.yMm - from.yMm);
		tops[i] = Math.max(tops[i]!, run > 0 ? up : Math.max(from.yMm, to.yMm));
	}
}

/** Whether a point of the line does more than go straight on. */
function turns(point: { yMm: number }, i: number, line: readonly { yMm: number }[]): boolean {
	const [before, after] = [line[i - 1], line[i + 1]];
	return !before || !after || Math.abs(before.yMm + after.yMm - 2 * point.yMm) > 1e-6;
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
