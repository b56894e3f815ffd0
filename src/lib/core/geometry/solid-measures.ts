import type { Solid } from './pattern';

export interface Point {
	xMm: number;
	yMm: number;
}

/** One upright solid by itself, its bottom face apart. */
export interface SolidMeasures {
	sideCm2: number;
	/** Upper faces: flat, sloped or domed. A wedge's slope and a dome are counted here. */
	topCm2: number;
	/** How much of the top another solid can hide. */
	standingCm2: number;
	bottomCm2: number;
	volumeMl: number;
	lengthMm: number;
	widthMm: number;
	heightMm: number;
	steepestWallDeg: number;
	/** Twice the integral of mean curvature over sides, top and their edges; hollows count negative. */
	edgeTurnMm: number;
	cornerTurnSr: number;
	footLengthMm: number;
	/** Board seen through the solid's own hole. */
	enclosedBoardCm2: number;
	/** Section through the middle, from the left foot over the top to the right foot. */
	section: Point[];
}

type Shape<S extends Solid['shape']> = Extract<Solid, { shape: S }>;

const QUARTER = Math.PI / 2;
const CM2 = 1 / 100;
const ML = 1 / 1000;
const DOME_STEPS = 24;

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const disc = (radiusMm: number): number => Math.PI * radiusMm ** 2 * CM2;
const points = (...pairs: [number, number][]): Point[] => pairs.map(([xMm, yMm]) => ({ xMm, yMm }));

function box({ lengthMm: l, widthMm: w, heightMm: h }: Shape<'box'>): SolidMeasures {
	const topCm2 = l * w * CM2;
	return {
		sideCm2: 2 * (l + w) * h * CM2,
		topCm2,
		standingCm2: topCm2,
		bottomCm2: topCm2,
		volumeMl: l * w * h * ML,
		lengthMm: l,
		widthMm: w,
		heightMm: h,
		steepestWallDeg: 90,
		edgeTurnMm: QUARTER * (4 * h + 2 * (l + w)),
		cornerTurnSr: 2 * Math.PI,
		footLengthMm: 2 * (l + w),
		enclosedBoardCm2: 0,
		section: points([-l / 2, 0], [-l / 2, h], [l / 2, h], [l / 2, 0])
	};
}

/** Frustum, cone (top 0) and cylinder (both alike). Its wall leans out when the top is the wider. */
function round(bottomMm: number, topMm: number, h: number): SolidMeasures {
	const [R, r] = [bottomMm / 2, topMm / 2];
	const wall = Math.atan2(h, R - r);
	return {
		sideCm2: Math.PI * (R + r) * Math.hypot(R - r, h) * CM2,
		topCm2: disc(r),
		standingCm2: disc(r),
		bottomCm2: disc(R),
		volumeMl: (Math.PI * h * (R * R + R * r + r * r) * ML) / 3,
		lengthMm: 2 * Math.max(R, r),
		widthMm: 2 * Math.max(R, r),
		heightMm: h,
		steepestWallDeg: degrees(wall),
		edgeTurnMm: 2 * Math.PI * h + 2 * Math.PI * r * wall,
		cornerTurnSr: 2 * Math.PI * (1 - Math.cos(wall)),
		footLengthMm: 2 * Math.PI * R,
		enclosedBoardCm2: 0,
		section: points([-R, 0], [-r, h], [r, h], [R, 0])
	};
}

function dome({ diameterMm, heightMm: h }: Shape<'dome'>): SolidMeasures {
	const a = diameterMm / 2;
	const R = (a * a + h * h) / (2 * h);
	const foot = Math.acos(Math.max(-1, 1 - h / R));
	const section = Array.from({ length: DOME_STEPS + 1 }, (_, step) => {
		const turn = foot * ((2 * step) / DOME_STEPS - 1);
		return { xMm: R * Math.sin(turn), yMm: Math.max(0, R * Math.cos(turn) - (R - h)) };
	});
	return {
		sideCm2: 0,
		topCm2: 2 * Math.PI * R * h * CM2,
		standingCm2: disc(a),
		bottomCm2: disc(a),
		volumeMl: (Math.PI * h * h * (3 * R - h) * ML) / 3,
		lengthMm: 2 * (h > R ? R : a),
		widthMm: 2 * (h > R ? R : a),
		heightMm: h,
		steepestWallDeg: degrees(foot),
		edgeTurnMm: 4 * Math.PI * h,
		cornerTurnSr: (2 * Math.PI * h) / R,
		footLengthMm: Math.PI * diameterMm,
		enclosedBoardCm2: 0,
		section
	};
}

function wedge({ lengthMm: l, widthMm: w, heightMm: h }: Shape<'wedge'>): SolidMeasures {
	const slopeMm = Math.hypot(l, h);
	const slope = Math.atan2(h, l);
	return {
		sideCm2: (w * h + l * h) * CM2,
		topCm2: slopeMm * w * CM2,
		standingCm2: l * w * CM2,
		bottomCm2: l * w * CM2,
		volumeMl: (l * w * h * ML) / 2,
		lengthMm: l,
		widthMm: w,
		heightMm: h,
		steepestWallDeg: 90,
		edgeTurnMm: (QUARTER + slope) * w + QUARTER * (2 * slopeMm + 2 * h),
		cornerTurnSr: Math.PI + 2 * slope,
		footLengthMm: 2 * (l + w),
		enclosedBoardCm2: 0,
		section: points([-l / 2, 0], [l / 2, h], [l / 2, 0])
	};
}

function ring(solid: Shape<'ring'>): SolidMeasures {
	const { outerDiameterMm: D, innerDiameterMm: d, heightMm: h } = solid;
	const topCm2 = disc(D / 2) - disc(d / 2);
	return {
		sideCm2: Math.PI * (D + d) * h * CM2,
		topCm2,
		standingCm2: topCm2,
		bottomCm2: topCm2,
		volumeMl: topCm2 * h * 0.1,
		lengthMm: D,
		widthMm: D,
		heightMm: h,
		steepestWallDeg: 90,
		// The hole's wall turns the other way than the outside's, so that the two cancel.
		edgeTurnMm: QUARTER * Math.PI * (D + d),
		cornerTurnSr: 0,
		footLengthMm: Math.PI * (D + d),
		enclosedBoardCm2: disc(d / 2),
		section: points(
			[-D / 2, 0],
			[-D / 2, h],
			[-d / 2, h],
			[-d / 2, 0],
			[d / 2, 0],
			[d / 2, h],
			[D / 2, h],
			[D / 2, 0]
		)
	};
}

/**
 * Areas, volume and turns of one upright solid. Lengths 0.1 mm to 10 m (the schema's range).
 *
 * Source: elementary mensuration, for example CRC Standard Mathematical Tables; turns follow
 * Steiner's formula for parallel bodies: a coat of thickness t takes A·t + edgeTurn·t²/2 +
 * cornerTurn·t³/3, exact for the convex shapes and, below half the hole's width, for the ring.
 */
export function measuresOf(solid: Solid): SolidMeasures {
	switch (solid.shape) {
		case 'box':
			return box(solid);
		case 'cylinder':
			return round(solid.diameterMm, solid.diameterMm, solid.heightMm);
		case 'frustum':
			return round(solid.bottomDiameterMm, solid.topDiameterMm, solid.heightMm);
		case 'dome':
			return dome(solid);
		case 'wedge':
			return wedge(solid);
		case 'ring':
			return ring(solid);
	}
}
