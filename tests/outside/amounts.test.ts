import { coatedAreaCm2, coatVolumeMl, type CoatSurface } from '../../src/lib/core/laws/coat-volume';
import { offsetVolumeMl } from '../../src/lib/core/laws/offset-volume';
import { filletVolumeMl, flangeVolumeMl } from '../../src/lib/core/laws/flange';
import { combinedFraction } from '../../src/lib/core/laws/order-quantity';
import { outsideCase } from './outside-case';

const STEINER = 'Steiner 1840, parallel bodies; exact geometry';
const SPHERES = 'difference of two spheres, 4/3 π R³';
const PI = Math.PI;
const cm2 = (mm2: number) => mm2 / 100;

/** Whole bodies, not standing on anything: what the closed formula is for. */
const box = (a: number, b: number, c: number): CoatSurface => ({
	areaCm2: cm2(2 * (a * b + b * c + c * a)),
	edgeTurnMm: 2 * PI * (a + b + c),
	cornerTurnSr: 4 * PI
});
const cylinder = (r: number, h: number): CoatSurface => ({
	areaCm2: cm2(2 * PI * r * (r + h)),
	edgeTurnMm: 2 * (PI * h + PI ** 2 * r),
	cornerTurnSr: 4 * PI
});
const sphere = (r: number): CoatSurface => ({
	areaCm2: cm2(4 * PI * r ** 2),
	edgeTurnMm: 8 * PI * r,
	cornerTurnSr: 4 * PI
});
const boxOnBoard = (a: number, b: number, h: number): CoatSurface => ({
	areaCm2: cm2(a * b + 2 * h * (a + b)),
	edgeTurnMm: (PI / 2) * (2 * (a + b) + 4 * h),
	cornerTurnSr: 2 * PI
});

const VOLUMES: [what: string, surface: CoatSurface, tMm: number, ownMl: number, totalMl: number][] =
	[
		['box 2 × 3 × 4 mm grown by 0.1 mm', box(2, 3, 4), 0.1, 0.024, 0.0294869321],
		['box 2 × 3 × 4 mm grown by 0.5 mm', box(2, 3, 4), 0.5, 0.024, 0.0575921822],
		['cylinder r 1, h 2 mm grown by 0.1 mm', cylinder(1, 2), 0.1, 2 * PI * 1e-3, 0.0083338576],
		['cylinder r 1, h 2 mm grown by 0.5 mm', cylinder(1, 2), 0.5, 2 * PI * 1e-3, 0.0202697595],
		['sphere R 5 mm grown by 0.3 mm', sphere(5), 0.3, (4 / 3) * PI * 0.125, 0.6236145193]
	];
for (const [what, surface, tMm, ownMl, totalMl] of VOLUMES) {
	outsideCase({
		what,
		source: STEINER,
		unit: 'mL',
		expected: totalMl,
		got: () => ownMl + coatVolumeMl(surface, tMm),
		tolerance: { fraction: 1e-8 }
	});
}
outsideCase({
	what: 'box 2 × 3 × 4 mm grown by 0.5 mm, as a Minkowski sum with a ball of 128 segments',
	source: 'mesh library manifold-3d 3.5.4, minkowskiSum (second opinion)',
	unit: 'mL',
	expected: 0.0575886,
	got: () => 0.024 + coatVolumeMl(box(2, 3, 4), 0.5),
	tolerance: { fraction: 1e-4 }
});
outsideCase({
	what: 'area of box 2 × 3 × 4 mm grown by 0.5 mm',
	source: STEINER,
	unit: 'cm²',
	expected: 0.834159265,
	got: () => coatedAreaCm2(box(2, 3, 4), 0.5),
	tolerance: { fraction: 1e-8 }
});
outsideCase({
	what: 'closed box 300 × 200 × 150 mm, coat of 6 mm',
	source: STEINER,
	unit: 'mL',
	expected: 1694.418,
	got: () => coatVolumeMl(box(300, 200, 150), 6),
	tolerance: 0.001
});
outsideCase({
	what: 'dome of 50 mm radius on a board, coat of 8 mm',
	source: SPHERES,
	unit: 'mL',
	expected: ((2 / 3) * PI * (58 ** 3 - 50 ** 3)) / 1000,
	got: () =>
		coatVolumeMl({ areaCm2: cm2(2 * PI * 2500), edgeTurnMm: 4 * PI * 50, cornerTurnSr: 2 * PI }, 8),
	tolerance: { fraction: 1e-9 }
});
outsideCase({
	what: 'box 100 × 60 × 40 mm on a board, coat of 10 mm',
	source: 'slabs, quarter cylinders and eighths of a sphere, added by hand',
	unit: 'mL',
	// Top and four walls 188; eight edges 480 mm of quarter cylinder; four corners, half a sphere.
	expected: 188 + (480 * PI * 100) / 4000 + ((2 / 3) * PI * 1000) / 1000,
	got: () => coatVolumeMl(boxOnBoard(100, 60, 40), 10),
	tolerance: { fraction: 1e-9 }
});
outsideCase({
	what: 'L-shaped trough of two plates 50 mm deep and 100 mm long, coat of 5 mm inside',
	source: 'plane geometry: two slabs share a square bar',
	unit: 'mL',
	expected: 2 * 25 - 2.5,
	got: () =>
		coatVolumeMl(
			{
				areaCm2: 100,
				edgeTurnMm: 0,
				cornerTurnSr: 0,
				insideEdges: [{ lengthMm: 100, turnDeg: 90 }]
			},
			5
		),
	tolerance: 1e-9
});
outsideCase({
	what: 'fillet of 10 mm radius along 1 m of right-angled inside edge',
	source: 'plane geometry: square less quarter circle',
	unit: 'mL',
	expected: 100 - (PI * 100) / 4,
	got: () => filletVolumeMl({ lengthMm: 1000, radiusMm: 10, turnDeg: 90 }),
	tolerance: 1e-9
});
outsideCase({
	what: 'flange round a foot of 100 × 60 mm in a frame of 200 × 160 mm, wall coat 10, flange 8 mm',
	source: 'plane geometry: rectangle less rounded rectangle',
	unit: 'mL',
	expected: ((32_000 - (6000 + 3200 + PI * 100)) * 8) / 1000,
	got: () =>
		flangeVolumeMl({
			outerAreaCm2: 320,
			footAreaCm2: 60,
			footPerimeterMm: 320,
			coatThicknessMm: 10,
			flangeThicknessMm: 8
		}),
	tolerance: 1e-9
});
const ball = (outerMm: number) => ({
	outerMm,
	volumeMl: ((4 / 3) * PI * ((40 + outerMm) ** 3 - 40 ** 3)) / 1000
});
for (const thicknessMm of [0.7, 5, 14]) {
	outsideCase({
		what: `${thicknessMm} mm over a ball of 40 mm radius, from its offsets of 2, 6 and 10 mm`,
		source: `${SPHERES}; exact geometry`,
		unit: 'mL',
		expected: ball(thicknessMm).volumeMl,
		got: () => offsetVolumeMl((4 * PI * 1600) / 100, [ball(2), ball(6), ball(10)], thicknessMm),
		tolerance: { fraction: 1e-9 }
	});
}
outsideCase({
	what: 'solid rubber coat of 8 mm on one square meter',
	source: 'film thickness and coverage, 1,000 · VS / DFT with VS = 1',
	unit: 'mL',
	expected: 8000,
	got: () => coatVolumeMl({ areaCm2: 10_000, edgeTurnMm: 0, cornerTurnSr: 0 }, 8),
	tolerance: 1e-9
});
outsideCase({
	what: 'uncertainty of ρ·A·t with 1 %, 2 % and 10 %',
	source: 'JCGM 100:2008 (GUM), 5.1.6, worked separately',
	unit: '%',
	expected: 10.25,
	got: () => 100 * combinedFraction([0.01, 0.02, 0.1]),
	tolerance: 0.005
});
