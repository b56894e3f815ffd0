import type { Outline } from './section';

/** Farther off than this part of the line's extent is seen in a picture. A choice. */
const SEEN_FRACTION = 5e-4;

/**
 * An open line with as few corners as keep it where it is, at most `most`: what lies closer to the
 * straight line between its neighbors than the eye can tell is left out.
 * Source: Douglas, Peucker 1973, Cartographica 10(2) (from memory).
 *
 * @param most - 2 or more
 */
export function simplified(line: Outline, most: number): Outline {
	const [xs, ys] = [line.map(({ xMm }) => xMm), line.map(({ yMm }) => yMm)];
	const span = (values: number[]): number =>
		values.reduce((a, b) => Math.max(a, b), -Infinity) -
		values.reduce((a, b) => Math.min(a, b), Infinity);
	for (let offMm = SEEN_FRACTION * Math.hypot(span(xs), span(ys)); ; offMm *= 1.5) {
		const kept = corners(line, offMm);
		if (kept.length <= Math.max(2, most) || offMm === 0) return kept;
	}
}

function corners(line: Outline, offMm: number): Outline {
	const isKept = new Uint8Array(line.length);
	isKept[0] = isKept[line.length - 1] = 1;
	const spans: [number, number][] = [[0, line.length - 1]];
	for (let span = spans.pop(); span !== undefined; span = spans.pop()) {
		const [from, to] = span;
		let [farthest, most] = [-1, offMm];
		for (let i = from + 1; i < to; i += 1) {
			const off = offLineMm(line[i]!, line[from]!, line[to]!);
			if (off > most) [farthest, most] = [i, off];
		}
		if (farthest < 0) continue;
		isKept[farthest] = 1;
		spans.push([from, farthest], [farthest, to]);
	}
	return line.filter((_, i) => isKept[i]);
}

function offLineMm(p: Outline[number], a: Outline[number], b: Outline[number]): number {
	const [dx, dy] = [b.xMm - a.xMm, b.yMm - a.yMm];
	const length = Math.hypot(dx, dy);
	const along = length > 0 ? ((p.xMm - a.xMm) * dx + (p.yMm - a.yMm) * dy) / length ** 2 : 0;
	const t = Math.max(0, Math.min(1, along));
	return Math.hypot(p.xMm - a.xMm - t * dx, p.yMm - a.yMm - t * dy);
}
