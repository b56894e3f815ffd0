interface Point {
	x: number;
	y: number;
}

/**
 * The line with as few of its points as keep it within `tolerance` of where it was. Its ends stay.
 *
 * Source: D. H. Douglas, T. K. Peucker, Algorithms for the reduction of the number of points required to represent a
 * digitized line or its caricature, Cartographica 10 (1973) 112–122 (from memory).
 *
 * @param tolerance - in the unit of the points, more than 0
 */
export function simplifyLine<P extends Point>(line: readonly P[], tolerance: number): P[] {
	const isKept = line.map((_, i) => i === 0 || i === line.length - 1);
	const spans: [number, number][] = [[0, line.length - 1]];
	for (let span = spans.pop(); span; span = spans.pop()) {
		const [from, to] = span;
		let farthest = -1;
		let most = tolerance;
		for (let i = from + 1; i < to; i++) {
			const off = distance(line[i]!, line[from]!, line[to]!);
			if (off > most) [farthest, most] = [i, off];
		}
		if (farthest === -1) continue;
		isKept[farthest] = true;
		spans.push([from, farthest], [farthest, to]);
	}
	return line.filter((_, i) => isKept[i]);
}

/** Of a point from the stretch between two others; where both are one, from that. */
function distance(point: Point, a: Point, b: Point): number {
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	const length2 = dx * dx + dy * dy;
	const along = (point.x - a.x) * dx + (point.y - a.y) * dy;
	const t = length2 === 0 ? 0 : Math.max(0, Math.min(1, along / length2));
	return Math.hypot(point.x - a.x - t * dx, point.y - a.y - t * dy);
}
