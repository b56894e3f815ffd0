/** Points in a triangle's own plane, x and y in turn. */
export type Flat = readonly [number, number];
/** A line that a surface is to be cut along. */
export type FlatLine = readonly [Flat, Flat];

/**
 * A triangle in convex pieces, none of which has one of the lines running through it; a line may be cut farther
 * than it reaches, to the sides of the pieces it runs through.
 *
 * @param same - points this near to each other or to a line are one, in the unit of the points
 */
export function piecesAlong(
	triangle: readonly Flat[],
	lines: readonly FlatLine[],
	same: number
): Flat[][] {
	let pieces: Flat[][] = [[...triangle]];
	for (const line of lines) {
		pieces = pieces.flatMap((piece) =>
			within(line, piece, same, same) > same ? split(piece, line, same) : [piece]
		);
	}
	return pieces;
}

/** How much of a line lies in a convex polygon made narrower by `inset` all around, wider with a negative one. */
export function within(
	[from, to]: FlatLine,
	polygon: readonly Flat[],
	inset: number,
	same: number
): number {
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const length = Math.hypot(dx, dy);
	if (length <= same) return 0;
	let [begin, end] = [0, 1];
	for (let i = 0; i < polygon.length; i += 1) {
		const [a, b] = [polygon[i]!, polygon[(i + 1) % polygon.length]!];
		const side = Math.hypot(b[0] - a[0], b[1] - a[1]);
		if (side === 0) continue;
		// Distances inside of the side, of the line's two ends.
		const [nx, ny] = [(a[1] - b[1]) / side, (b[0] - a[0]) / side];
		const atFrom = nx * (from[0] - a[0]) + ny * (from[1] - a[1]) - inset;
		const atTo = nx * (to[0] - a[0]) + ny * (to[1] - a[1]) - inset;
		if (atFrom <= 0 && atTo <= 0) return 0;
		if (atFrom < 0) begin = Math.max(begin, atFrom / (atFrom - atTo));
		else if (atTo < 0) end = Math.min(end, atFrom / (atFrom - atTo));
	}
	return Math.max(0, end - begin) * length;
}

function split(piece: readonly Flat[], [from, to]: FlatLine, same: number): Flat[][] {
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	const [nx, ny] = [(from[1] - to[1]) / length, (to[0] - from[0]) / length];
	const sides = piece.map(([x, y]) => {
		const side = nx * (x - from[0]) + ny * (y - from[1]);
		return Math.abs(side) <= same ? 0 : side;
	});
	if (!sides.some((side) => side > 0) || !sides.some((side) => side < 0)) return [[...piece]];
	const [left, right]: [Flat[], Flat[]] = [[], []];
	piece.forEach((point, i) => {
		const [own, next] = [sides[i]!, sides[(i + 1) % piece.length]!];
		if (own >= 0) left.push(point);
		if (own <= 0) right.push(point);
		if (own * next >= 0) return;
		const [x, y] = piece[(i + 1) % piece.length]!;
		const part = own / (own - next);
		const met: Flat = [point[0] + (x - point[0]) * part, point[1] + (y - point[1]) * part];
		left.push(met);
		right.push(met);
	});
	return [left, right];
}

/** Whether a point lies in a convex polygon, its rim counted. */
export function holds(polygon: readonly Flat[], [x, y]: Flat): boolean {
	let [isLeft, isRight] = [false, false];
	for (let i = 0; i < polygon.length; i += 1) {
		const [a, b] = [polygon[i]!, polygon[(i + 1) % polygon.length]!];
		const turn = (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
		if (turn > 0) isLeft = true;
		if (turn < 0) isRight = true;
	}
	return !(isLeft && isRight);
}
