import type { PointMm } from '$lib/core/geometry/profile-offset';
import type { SectionModel } from './section-model';

/** The pattern's outline from foot to foot, centered on x = 0; a box when no profile is known. */
export function patternOutline({ pattern }: SectionModel): PointMm[] {
	const { widthMm, heightMm, profile } = pattern;
	if (profile === undefined || profile.length < 2) {
		return [
			{ xMm: -widthMm / 2, yMm: 0 },
			{ xMm: -widthMm / 2, yMm: heightMm },
			{ xMm: widthMm / 2, yMm: heightMm },
			{ xMm: widthMm / 2, yMm: 0 }
		];
	}
	const xs = profile.map(({ xMm }) => xMm);
	const middleMm = (Math.min(...xs) + Math.max(...xs)) / 2;
	const isLeftToRight = profile[0]!.xMm <= profile.at(-1)!.xMm;
	const line = (isLeftToRight ? profile : profile.toReversed()).map(({ xMm, yMm }) => ({
		xMm: xMm - middleMm,
		yMm: Math.max(0, yMm)
	}));
	const first = line[0]!;
	const last = line.at(-1)!;
	return [
		...(first.yMm > 0 ? [{ xMm: first.xMm, yMm: 0 }] : []),
		...line,
		...(last.yMm > 0 ? [{ xMm: last.xMm, yMm: 0 }] : [])
	];
}

/** A line standing on the board, drawn out along the board to `reachMm` on both sides. */
export function onBoard(line: PointMm[], reachMm: number): PointMm[] {
	const first = line[0]!;
	const last = line.at(-1)!;
	return [
		{ xMm: -reachMm, yMm: 0 },
		...(first.yMm > 0 ? [{ xMm: first.xMm, yMm: 0 }] : []),
		...line,
		...(last.yMm > 0 ? [{ xMm: last.xMm, yMm: 0 }] : []),
		{ xMm: reachMm, yMm: 0 }
	];
}

export function slab(left: number, right: number, bottom: number, top: number): PointMm[] {
	return [
		{ xMm: left, yMm: bottom },
		{ xMm: left, yMm: top },
		{ xMm: right, yMm: top },
		{ xMm: right, yMm: bottom }
	];
}

/** The highest height of a line at `xMm`; 0 beside it. */
export function topAtMm(line: PointMm[], xMm: number): number {
	let topMm = 0;
	for (let i = 0; i + 1 < line.length; i++) {
		const a = line[i]!;
		const b = line[i + 1]!;
		if (xMm < Math.min(a.xMm, b.xMm) || xMm > Math.max(a.xMm, b.xMm)) continue;
		const t = a.xMm === b.xMm ? 1 : (xMm - a.xMm) / (b.xMm - a.xMm);
		topMm = Math.max(topMm, a.yMm + (b.yMm - a.yMm) * t);
	}
	return topMm;
}
