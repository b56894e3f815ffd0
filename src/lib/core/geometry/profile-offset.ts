export interface PointMm {
	xMm: number;
	yMm: number;
}

interface Piece {
	from: PointMm;
	to: PointMm;
}

const ARC_STEP_RAD = Math.PI / 18;
/** A chord of a round join lies inside its arc by 1 − cos(half a step), 0.4 %. */
const SLACK_FRACTION = 0.01;

/**
 * The line that lies `distanceMm` outward of an open profile: the surface of a coat of even thickness.
 *
 * The profile runs from left to right with y upward, and outward is to the left of its travel, so
 * upward. Outer corners become arcs (chords of 10° at most, 0.4 % inside the true arc); in inner
 * corners and in recesses too narrow for the coat the sides meet. The ends keep their direction,
 * so a profile that ends flat upon the board gives a coat that ends square above it.
 *
 * Source: the parallel curve of a boundary, Steiner's outer parallel body (from memory).
 *
 * @param profile - at least two different points, millimeters
 * @param distanceMm - zero or more
 * @throws RangeError on fewer than two different points, or a distance that is negative or not finite
 */
export function offsetProfile(profile: PointMm[], distanceMm: number): PointMm[] {
	const points = profile.filter((point, i) => i === 0 || spanMm(point, profile[i - 1]!) > 1e-9);
	if (points.length < 2) {
		throw new RangeError(`a profile has ${points.length} different points; accepted: 2 or more`);
	}
	if (!(distanceMm >= 0 && distanceMm < Infinity)) {
		throw new RangeError(`distanceMm is ${distanceMm}; accepted: 0 or more, finite`);
	}
	if (distanceMm === 0) return points;

	const limitMm = distanceMm * (1 - SLACK_FRACTION);
	const kept = splitWhereCrossing(rawOffset(points, distanceMm)).filter(({ from, to }) =>
		isClearOf(points, between(from, to, 0.5), limitMm)
	);
	return chained(kept, distanceMm * 1e-6 + 1e-9);
}

/** Sides shifted outward, joined by arcs at outer corners and by crossing ends at inner ones. */
function rawOffset(points: PointMm[], distanceMm: number): PointMm[] {
	const raw: PointMm[] = [];
	for (let i = 0; i + 1 < points.length; i++) {
		const a = points[i]!;
		const b = points[i + 1]!;
		const angle = normalRad(a, b);
		if (i > 0) {
			const before = normalRad(points[i - 1]!, a);
			const turn = Math.atan2(Math.sin(angle - before), Math.cos(angle - before));
			const steps = turn < 0 ? Math.ceil(-turn / ARC_STEP_RAD) : 0;
			for (let s = 1; s < steps; s++) raw.push(shifted(a, before + (turn * s) / steps, distanceMm));
		}
		raw.push(shifted(a, angle, distanceMm), shifted(b, angle, distanceMm));
	}
	return raw;
}

function splitWhereCrossing(line: PointMm[]): Piece[] {
	const sides: Piece[] = line.slice(1).map((to, i) => ({ from: line[i]!, to }));
	const cuts: { at: number; point: PointMm }[][] = sides.map(() => []);
	for (let i = 0; i < sides.length; i++) {
		for (let j = i + 2; j < sides.length; j++) {
			if (!mayMeet(sides[i]!, sides[j]!)) continue;
			const hit = crossing(sides[i]!, sides[j]!);
			if (hit === null) continue;
			cuts[i]!.push({ at: hit.t, point: hit.point });
			cuts[j]!.push({ at: hit.u, point: hit.point });
		}
	}
	return sides.flatMap(({ from, to }, i) => {
		const inner = cuts[i]!.sort((a, b) => a.at - b.at).map(({ point }) => point);
		const stops = [from, ...inner, to];
		return stops.slice(1).map((stop, s) => ({ from: stops[s]!, to: stop }));
	});
}

/** Kept pieces in order of travel; pockets that close upon themselves are left out. */
function chained(pieces: Piece[], nearMm: number): PointMm[] {
	const real = pieces.filter(({ from, to }) => spanMm(from, to) > nearMm);
	const first = real[0];
	if (first === undefined) return [];
	const line = [first.from, first.to];
	let i = 0;
	for (;;) {
		const end = line.at(-1)!;
		const next = nextIndex(real, i, end, nearMm);
		if (next === -1) return line;
		i = next;
		line.push(real[i]!.to);
	}
}

/** The latest piece that starts where the line ends, else simply the next one. */
function nextIndex(pieces: Piece[], i: number, end: PointMm, nearMm: number): number {
	for (let j = pieces.length - 1; j > i; j--) {
		if (spanMm(pieces[j]!.from, end) <= nearMm) return j;
	}
	return i + 1 < pieces.length ? i + 1 : -1;
}

function crossing(a: Piece, b: Piece): { t: number; u: number; point: PointMm } | null {
	const ax = a.to.xMm - a.from.xMm;
	const ay = a.to.yMm - a.from.yMm;
	const bx = b.to.xMm - b.from.xMm;
	const by = b.to.yMm - b.from.yMm;
	const cross = ax * by - ay * bx;
	if (Math.abs(cross) < 1e-12) return null;
	const dx = b.from.xMm - a.from.xMm;
	const dy = b.from.yMm - a.from.yMm;
	const t = (dx * by - dy * bx) / cross;
	const u = (dx * ay - dy * ax) / cross;
	return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? { t, u, point: between(a.from, a.to, t) } : null;
}

/** Whether the boxes round two sides touch; asked of each pair, where most lie far apart. */
function mayMeet(a: Piece, b: Piece): boolean {
	return (
		Math.max(a.from.xMm, a.to.xMm) >= Math.min(b.from.xMm, b.to.xMm) &&
		Math.max(b.from.xMm, b.to.xMm) >= Math.min(a.from.xMm, a.to.xMm) &&
		Math.max(a.from.yMm, a.to.yMm) >= Math.min(b.from.yMm, b.to.yMm) &&
		Math.max(b.from.yMm, b.to.yMm) >= Math.min(a.from.yMm, a.to.yMm)
	);
}

/** Whether no part of the line is nearer to the point than `limitMm`. */
function isClearOf(line: PointMm[], point: PointMm, limitMm: number): boolean {
	const limitMm2 = limitMm * limitMm;
	for (let i = 0; i + 1 < line.length; i++) {
		const a = line[i]!;
		const b = line[i + 1]!;
		const dx = b.xMm - a.xMm;
		const dy = b.yMm - a.yMm;
		const px = point.xMm - a.xMm;
		const py = point.yMm - a.yMm;
		const t = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
		const offX = px - dx * t;
		const offY = py - dy * t;
		if (offX * offX + offY * offY < limitMm2) return false;
	}
	return true;
}

function normalRad(a: PointMm, b: PointMm): number {
	return Math.atan2(b.xMm - a.xMm, a.yMm - b.yMm);
}

function shifted({ xMm, yMm }: PointMm, angleRad: number, byMm: number): PointMm {
	return { xMm: xMm + byMm * Math.cos(angleRad), yMm: yMm + byMm * Math.sin(angleRad) };
}

function between(a: PointMm, b: PointMm, t: number): PointMm {
	return { xMm: a.xMm + (b.xMm - a.xMm) * t, yMm: a.yMm + (b.yMm - a.yMm) * t };
}

function spanMm(a: PointMm, b: PointMm): number {
	const dx = a.xMm - b.xMm;
	const dy = a.yMm - b.yMm;
	// Not Math.hypot, which guards against overflow and takes many times as long.
	return Math.sqrt(dx * dx + dy * dy);
}
