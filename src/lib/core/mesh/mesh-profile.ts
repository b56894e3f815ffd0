import type { Bounds } from './measures';
import type { Mesh } from './mesh';
import { planeCut, type PlanePoint } from './plane-cut';

const COLUMNS = 240;

/**
 * Outline of a placed mesh over its middle, from the left foot over the top to the right foot: the
 * highest point above each of 241 places along the length.
 */
export function meshProfile(mesh: Mesh, { min, max }: Bounds): { xMm: number; yMm: number }[] {
	const rings = planeCut(mesh, { across: 'y', atMm: (min[1] + max[1]) / 2 });
	const points = rings.flat();
	if (points.length < 3) return boxOutline({ min, max });
	const low = points.reduce((least, { alongMm }) => Math.min(least, alongMm), Infinity);
	const high = points.reduce((most, { alongMm }) => Math.max(most, alongMm), -Infinity);
	const tops = new Float64Array(COLUMNS + 1);
	const step = (high - low) / COLUMNS || 1;
	for (const ring of rings) {
		ring.forEach((from, i) => raise(tops, low, step, from, ring[(i + 1) % ring.length]!));
	}
	const line = [...tops].map((yMm, i) => ({ xMm: low + i * step, yMm }));
	return [{ xMm: low, yMm: 0 }, ...line.filter(turns), { xMm: high, yMm: 0 }];
}

function raise(tops: Float64Array, low: number, step: number, a: PlanePoint, b: PlanePoint): void {
	const [from, to] = a.alongMm <= b.alongMm ? [a, b] : [b, a];
	const run = to.alongMm - from.alongMm;
	const last = Math.min(COLUMNS, Math.floor((to.alongMm - low) / step + 1e-9));
	for (let i = Math.max(0, Math.ceil((from.alongMm - low) / step - 1e-9)); i <= last; i += 1) {
		const part = run > 0 ? Math.min(1, Math.max(0, (low + i * step - from.alongMm) / run)) : 1;
		const up = from.upMm + part * (to.upMm - from.upMm);
		tops[i] = Math.max(tops[i]!, run > 0 ? up : Math.max(from.upMm, to.upMm));
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
