import type { Body, Surface } from './pattern';

type Measured = Extract<Body, { kind: 'measured' }>;

/**
 * Surface of a pattern known by area, volume and size only.
 *
 * The outline is taken to fill at least the ellipse in its rectangle, and edges are those of the box
 * around it: both err toward more material. Sizes in the schema's ranges.
 */
export function measuredSurface(body: Measured): Surface {
	const { exposedAreaCm2, volumeMl, lengthMm, widthMm, heightMm, steepestWallDeg } = body;
	const rectangleCm2 = (lengthMm * widthMm) / 100;
	const meanSectionCm2 = (volumeMl * 10) / heightMm;
	const footprintCm2 = Math.min(
		rectangleCm2,
		Math.max(meanSectionCm2, (rectangleCm2 * Math.PI) / 4)
	);
	// Between the ellipse's perimeter and the rectangle's, as the footprint lies between their areas.
	const squareness = (footprintCm2 / rectangleCm2 - Math.PI / 4) / (1 - Math.PI / 4);
	const around = Math.PI / 2 + squareness * (2 - Math.PI / 2);
	return {
		exposedAreaCm2,
		volumeMl,
		footprintCm2,
		lengthMm,
		widthMm,
		heightMm,
		steepestWallDeg,
		edgeTurnMm: (Math.PI / 2) * (4 * heightMm + 2 * (lengthMm + widthMm)),
		cornerTurnSr: 2 * Math.PI,
		footLengthMm: around * (lengthMm + widthMm),
		enclosedBoardCm2: 0,
		profile: outline(body)
	};
}

function outline({ lengthMm, heightMm, steepestWallDeg }: Measured): Surface['profile'] {
	const lean = heightMm / Math.tan((Math.max(5, steepestWallDeg) * Math.PI) / 180);
	const half = lengthMm / 2;
	const topHalf = Math.max(0, Math.min(half, half - lean));
	const footHalf = Math.max(half * 0.1, Math.min(half, half + lean));
	return [
		{ xMm: -footHalf, yMm: 0 },
		{ xMm: -topHalf, yMm: heightMm },
		{ xMm: topHalf, yMm: heightMm },
		{ xMm: footHalf, yMm: 0 }
	];
}
