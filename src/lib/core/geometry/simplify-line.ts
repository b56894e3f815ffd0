import type { PointMm } from './profile-offset';

/**
 * The line with as few of its points as keep it within `toleranceMm` of where it was. Its ends stay.
 *
 * Source: D. H. Douglas, T. K. Peucker, Algorithms for the reduction of the number of points required to represent a
 * digitized line or its caricature, Cartographica 10 (1973) 112–122 (from memory).
 *
 * @param toleranceMm - more than 0
 */
export function simplifyLine(line: readonly PointMm[], toleranceMm: number): PointMm[] {
	const isKept = line.map((_, i) => i === 0 || i === line.length - 1);
	const spans: [number, number][] = [[0, line.length - 1]];
	for (let span = spans.pop(); span; span = spans.pop()) {
		const [from, to] = span;
		let farthest = -1;
		let mostMm = toleranceMm;
		for (let i = from + 1; i < to; i++) {
			const offMm = distanceMm(line[i]!, line[from]!, line[to]!);
			if (offMm > mostMm) [farthest, mostMm] = [i, offMm];
		}
		if (farthest === -1) continue;
		isKept[farthest] = true;
		spans.push([from, farthest], [farthest, to]);
	}
	return line.filter((_, i) => isKept[i]);
}

/** Of a point from the stretch between two others; where both are one, from that. */
function distanceMm(point: PointMm, a: PointMm, b: PointMm): number {
	const dx = b.xMm - a.xMm;
	const dy = b.yMm - a.yMm;
	const px = point.xMm - a.xMm;
	const py = point.yMm - a.yMm;
	const length2 = dx * dx + dy * dy;
	const t = length2 === 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / length2));
	return Math.sqrt((px - t * dx) ** 2 + (py - t * dy) ** 2);
}
