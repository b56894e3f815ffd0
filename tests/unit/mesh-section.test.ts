import { describe, expect, test } from 'vitest';
import { sectionBands } from '../../src/lib/core/mesh/coat-section';
import { DEMO_PATTERNS } from '../../src/lib/core/mesh/demo/demo-patterns';
import { healthOf } from '../../src/lib/core/mesh/health';
import { isoSurface } from '../../src/lib/core/mesh/iso-surface';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import {
	pointOnPlane,
	sectionOf,
	uprightPlane,
	type Outline
} from '../../src/lib/core/mesh/section';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { blocks, box, mapped, sphere } from '../fixtures/mesh-solids';

const areaOf = (outline: Outline): number =>
	outline.reduce((sum, p, i) => {
		const q = outline[(i + 1) % outline.length]!;
		return sum + (p.xMm * q.yMm - q.xMm * p.yMm) / 2;
	}, 0);
const areaIn = (outlines: Outline[]): number =>
	outlines.reduce((sum, line) => sum + areaOf(line), 0);

describe('a section', () => {
	test('of a box is a rectangle wherever it is turned', () => {
		const mesh = mapped(box(40, 30, 20), ([x, y, z]) => [x - 20, y - 15, z]);
		expect(areaIn(sectionOf(mesh, uprightPlane({ xMm: 0, yMm: 0, turnDeg: 0 })))).toBeCloseTo(
			800,
			6
		);
		expect(areaIn(sectionOf(mesh, uprightPlane({ xMm: 0, yMm: 0, turnDeg: 90 })))).toBeCloseTo(
			600,
			6
		);
		expect(areaIn(sectionOf(mesh, { normal: [0, 0, 1], offsetMm: 5 }))).toBeCloseTo(1200, 6);
	});

	test('of a hollow ball has an outline within the other, of opposite sense', () => {
		const hollow = mapped(sphere(5, 3), ([x, y, z]) => [x, y, -z]);
		const ball = sphere(10, 3);
		const both = {
			positions: Float64Array.from([...ball.positions, ...hollow.positions]),
			triangles: Uint32Array.from([
				...ball.triangles,
				...hollow.triangles.map((v) => v + ball.positions.length / 3)
			])
		};
		const areas = sectionOf(both, { normal: [0, 0, 1], offsetMm: 0.1 }).map(areaOf);
		expect(areas.map(Math.sign).sort()).toEqual([-1, 1]);
		expect(Math.abs(areas[0]! + areas[1]!)).toBeCloseTo(Math.PI * 75, -1);
	});

	test('draws a point of space where it is', () => {
		const plane = uprightPlane({ xMm: 3, yMm: 4, turnDeg: 30 });
		const [outline] = sectionOf(box(10, 10, 10), plane);
		for (const point of outline!) {
			const [, , z] = pointOnPlane(plane, point);
			expect(z).toBeCloseTo(point.yMm, 9);
		}
	});

	test('shows the coats to scale, over the board only', () => {
		const mesh = mapped(box(40, 30, 20), ([x, y, z]) => [x - 20, y - 15, z]);
		const { offsets } = sectionBands(
			mesh,
			uprightPlane({ xMm: 0, yMm: 0, turnDeg: 0 }),
			[2, 6],
			new SurfaceDistance(mesh)
		);
		for (const { distanceMm: t, outlines } of offsets) {
			const exact = 40 * 20 + 40 * t + 2 * 20 * t + (Math.PI / 2) * t * t;
			expect(areaIn(outlines) / exact).toBeCloseTo(1, 3);
			expect(Math.min(...outlines.flat().map(({ yMm }) => yMm))).toBe(0);
		}
	});
});

describe('a surface drawn from a distance', () => {
	test('shows a coat whole that lies over what stands out behind the plane', () => {
		// A wall 10 mm thick that steps out by 4 mm just behind the plane.
		const stepped = blocks(
			[
				[0, 10, 14],
				[0, 20, 40],
				[0, 30]
			],
			(i, j) => i === 0 || j === 1
		);
		const plane = uprightPlane({ xMm: 0, yMm: 18, turnDeg: 0 });
		const { offsets } = sectionBands(stepped, plane, [8], new SurfaceDistance(stepped));
		const outlines = offsets[0]!.outlines;
		expect(outlines).toHaveLength(1);
		const xs = outlines[0]!.map(({ xMm }) => xMm);
		// 2 mm before the step: √(8² − 2²) beyond its face, and 8 beyond the other side.
		expect(Math.max(...xs)).toBeCloseTo(14 + Math.sqrt(60), 1);
		expect(Math.min(...xs)).toBeCloseTo(-8, 1);
	});

	test('of a ball is closed and has its volume', () => {
		const mesh = isoSurface(
			(x, y, z) => Math.hypot(x, y, z) - 8,
			{ min: [-10, -10, -10], max: [10, 10, 10] },
			0.7
		);
		expect(healthOf(mesh).isWatertight).toBe(true);
		expect(Math.abs(measuresOf(mesh).signedVolume / ((4 / 3) * Math.PI * 512) - 1)).toBeLessThan(
			0.01
		);
	});
});

describe('the invented patterns', () => {
	test.each(DEMO_PATTERNS.map((pattern) => [pattern.name, pattern] as const))(
		'%s is closed and lies on the board',
		(_, pattern) => {
			const mesh = pattern.mesh();
			const { isWatertight, shells, trust } = healthOf(mesh);
			expect({ isWatertight, parts: shells.length, trust }).toEqual({
				isWatertight: true,
				parts: 1,
				trust: { area: true, volume: true, distance: true }
			});
			const { bounds, signedVolume } = measuresOf(mesh);
			expect(bounds.min[2]).toBeCloseTo(0, 2);
			expect(signedVolume).toBeGreaterThan(100_000);
			expect(bounds.max[0] - bounds.min[0]).toBeGreaterThan(100);
		}
	);
});
