import bunny from 'bunny';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexHull } from '../../src/lib/core/mesh/convex-hull';
import { exposedOf } from '../../src/lib/core/mesh/exposed';
import { measuresOf } from '../../src/lib/core/mesh/measures';
import type { Mesh } from '../../src/lib/core/mesh/mesh';
import { lyingSides, placedMesh } from '../../src/lib/core/mesh/place';
import { restsOf } from '../../src/lib/core/mesh/rests';
import { binaryStlMeasures } from '../../src/lib/core/mesh/stl-measures';
import { guessUnit } from '../../src/lib/core/mesh/unit-guess';
import { stlBinary } from '../fixtures/mesh-files';
import { bunnyMesh } from '../fixtures/mesh-bunny';
import { box, frustum, mapped, meshOf, sphere, together } from '../fixtures/mesh-solids';

const flat = { unitMm: 1, down: [0, 0, -1], turnDeg: 0, scale: 1 } as const;

describe('measures', () => {
	test('of a box are those of the school book', () => {
		const { area, signedVolume, center, bounds } = measuresOf(box(2, 3, 4));
		expect(area).toBeCloseTo(52, 12);
		expect(signedVolume).toBeCloseTo(24, 12);
		[1, 1.5, 2].forEach((value, axis) => expect(center[axis]).toBeCloseTo(value, 12));
		expect(bounds).toEqual({ min: [0, 0, 0], max: [2, 3, 4] });
	});

	test('keep their digits a kilometer away', () => {
		const far = mapped(box(2, 3, 4), ([x, y, z]) => [x + 1e6, y - 1e6, z + 1e6]);
		expect(measuresOf(far).signedVolume).toBeCloseTo(24, 6);
		expect(measuresOf(far).center[0]).toBeCloseTo(1e6 + 1, 6);
	});

	test('straight from STL bytes are those of the mesh read', () => {
		const solid = frustum(3, 1.5, 4, 37);
		const quick = binaryStlMeasures(stlBinary(solid))!;
		const slow = measuresOf(solid);
		expect(quick.area).toBeCloseTo(slow.area, 4);
		expect(quick.signedVolume).toBeCloseTo(slow.signedVolume, 4);
		expect(quick.center[2]).toBeCloseTo(slow.center[2], 5);
		expect(binaryStlMeasures(stlBinary(solid).subarray(1))).toBeNull();
	});

	test('of a sheet have no volume and a center among its corners', () => {
		const sheet = meshOf([
			[0, 0, 1],
			[3, 0, 1],
			[0, 3, 1]
		]);
		const none = { area: 4.5, signedVolume: 0, center: [1, 1, 1] };
		expect(measuresOf(sheet)).toMatchObject(none);
		expect(binaryStlMeasures(stlBinary(sheet))).toMatchObject(none);
	});

	test('turn, move, grow and shuffle with the mesh', () => {
		const reference = measuresOf(bunnyMesh());
		fc.assert(
			fc.property(
				fc.double({ min: -4, max: 4, noNaN: true }),
				fc.double({ min: 0.1, max: 10, noNaN: true }),
				fc.integer({ min: 1, max: 3673 }),
				(angle, scale, shift) => {
					const [c, s] = [Math.cos(angle), Math.sin(angle)];
					const moved = mapped(bunnyMesh(), ([x, y, z]) => [
						scale * (c * x - s * y) + 7,
						scale * (s * x + c * y) - 3,
						scale * z + angle
					]);
					const { area, signedVolume } = measuresOf(rolled(moved, shift));
					expect(area / (reference.area * scale ** 2)).toBeCloseTo(1, 9);
					expect(signedVolume / (reference.signedVolume * scale ** 3)).toBeCloseTo(1, 9);
				}
			),
			{ numRuns: 30 }
		);
	});
});

/** The same triangles, listed from another one on. */
function rolled({ positions, triangles }: Mesh, shift: number): Mesh {
	const from = 3 * shift;
	return {
		positions,
		triangles: Uint32Array.from([...triangles.subarray(from), ...triangles.subarray(0, from)])
	};
}

describe('the hull', () => {
	test('of the bunny has the area and volume two other tools give', () => {
		const { area, signedVolume } = measuresOf(convexHull(bunnyMesh())!);
		expect(bunny.positions).toHaveLength(1839);
		expect(area).toBeCloseTo(247.477208, 5);
		expect(signedVolume).toBeCloseTo(308.151183, 5);
	});

	test('of random points holds them all and is closed', () => {
		fc.assert(
			fc.property(
				fc.array(
					fc.tuple(
						fc.integer({ min: -9, max: 9 }),
						fc.integer({ min: -9, max: 9 }),
						fc.integer({ min: -9, max: 9 })
					),
					{ minLength: 4, maxLength: 60 }
				),
				(points) => {
					const positions = Float64Array.from(points.flat());
					const hull = convexHull({ positions });
					if (!hull) return;
					const reversed = new Set<string>();
					for (let t = 0; t < hull.triangles.length; t += 3) {
						const [a, b, c] = hull.triangles.subarray(t, t + 3);
						for (const edge of [`${b}-${a}`, `${c}-${b}`, `${a}-${c}`]) reversed.add(edge);
						const [p, q, r] = [points[a!]!, points[b!]!, points[c!]!];
						const u = q.map((value, k) => value - p[k]!);
						const v = r.map((value, k) => value - p[k]!);
						const n = [
							u[1]! * v[2]! - u[2]! * v[1]!,
							u[2]! * v[0]! - u[0]! * v[2]!,
							u[0]! * v[1]! - u[1]! * v[0]!
						];
						const highest = Math.max(
							...points.map((point) =>
								point.reduce((sum, value, k) => sum + (value - p[k]!) * n[k]!, 0)
							)
						);
						expect(highest).toBeLessThanOrEqual(1e-6 * Math.hypot(...n));
					}
					expect(reversed.size).toBe(hull.triangles.length);
				}
			),
			{ numRuns: 100 }
		);
	});

	test('of points in a plane is none', () => {
		expect(
			convexHull({ positions: Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 1, 0) })
		).toBeNull();
	});
});

describe('rests on the board', () => {
	test('a box lies on its largest faces first and tips when its center leaves the face', () => {
		const rests = restsOf(box(20, 30, 40));
		expect(rests.map(({ area }) => Math.round(area))).toEqual([1200, 1200, 800, 800, 600, 600]);
		expect(rests[0]!.tipsAtDeg).toBeCloseTo((Math.atan2(15, 10) * 180) / Math.PI, 9);
	});

	test('a cone stands on its base and rolls on its side', () => {
		const [base] = restsOf(frustum(10, 0, 20, 64));
		expect(base!.down[2]).toBeCloseTo(-1, 9);
		expect(base!.tipsAtDeg).toBeCloseTo(
			(Math.atan2(10 * Math.cos(Math.PI / 64), 5) * 180) / Math.PI,
			6
		);
	});

	test('a bar that leans too far does not stay on its foot', () => {
		const leaned = mapped(box(10, 10, 40), ([x, y, z]) => [x + z, y, z]);
		expect(restsOf(leaned).some(({ down }) => down[2] < -0.999)).toBe(false);
	});
});

describe('placing', () => {
	test('lays the chosen face on the board, in millimeters, centered', () => {
		const placed = placedMesh(box(1, 2, 3), {
			unitMm: 25.4,
			down: [1, 0, 0],
			turnDeg: 30,
			scale: 1.01
		});
		const { bounds, signedVolume } = measuresOf(placed);
		expect(bounds.min[2]).toBe(0);
		expect(bounds.max[2]).toBeCloseTo(25.4 * 1.01, 9);
		expect(bounds.min[0]).toBeCloseTo(-bounds.max[0], 9);
		expect(signedVolume).toBeCloseTo(6 * (25.4 * 1.01) ** 3, 6);
	});

	test('has sides before it is laid down that are those it has then', () => {
		const cone = frustum(20, 5, 30, 60);
		for (const down of [
			[0, 0, -1],
			[0, 1, 0],
			[0.6, 0, 0.8]
		] as [number, number, number][]) {
			const { x, y, height } = lyingSides(cone, down);
			const { max, min } = measuresOf(
				placedMesh(cone, { unitMm: 1, scale: 1, down, turnDeg: 0 })
			).bounds;
			const sides = max.map((high, axis) => high - min[axis]!);
			[x, y, height].forEach((side, axis) => expect(side).toBeCloseTo(sides[axis]!, 9));
		}
	});

	test('refuses a scale that is none', () => {
		expect(() => placedMesh(box(1, 1, 1), { ...flat, scale: 0 })).toThrow('above 0');
		expect(() => placedMesh(box(1, 1, 1), { ...flat, down: [0, 0, 0] })).toThrow('direction');
	});
});

describe('what the brush covers', () => {
	test('a box on the board shows five faces', () => {
		const { exposedAreaCm2, footprintCm2, steepestWallDeg } = exposedOf(
			placedMesh(box(200, 300, 150), flat)
		);
		expect(exposedAreaCm2).toBeCloseTo(600 + 2 * 300 + 2 * 450, 9);
		expect(footprintCm2).toBeCloseTo(600, 9);
		expect(steepestWallDeg).toBeCloseTo(90, 9);
	});

	test('a cone that widens upward is undercut by its lean', () => {
		const { steepestWallDeg } = exposedOf(frustum(10, 20, 10, 90));
		expect(steepestWallDeg).toBeCloseTo(135, 1);
	});

	test('a closed hollow is not covered', () => {
		const hollow = mapped(sphere(5, 2), ([x, y, z]) => [x + 10, y + 10, 10 - z]);
		const { exposedAreaCm2, enclosedAreaCm2 } = exposedOf(together(box(20, 20, 20), hollow));
		expect(exposedAreaCm2).toBeCloseTo(20, 9);
		expect(enclosedAreaCm2).toBeGreaterThan(2.8);
	});
});

describe('the unit a size suggests', () => {
	test.each([
		[250, 'mm', false],
		[8, 'in', false],
		[0.3, 'm', true],
		[2000, 'mm', true],
		[1e5, 'mm', false]
	])('%s', (longest, unit, isOnlyOne) => {
		expect(guessUnit({ min: [0, 0, 0], max: [1e-3, longest, 1e-3] })).toMatchObject({
			unit,
			isOnlyOne
		});
	});
});
