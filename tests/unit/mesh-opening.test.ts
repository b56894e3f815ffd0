import { describe, expect, test } from 'vitest';
import { steppedPulley } from '../../src/lib/core/mesh/demo/stepped-pulley';
import {
	grownField,
	heightFieldOf,
	leastHeightNear,
	pointOver
} from '../../src/lib/core/mesh/height-field';
import { shellOpening } from '../../src/lib/core/mesh/opening';
import { standsStretch, stretchOf } from '../../src/lib/core/mesh/stretch';
import { SurfaceDistance } from '../../src/lib/core/mesh/surface-distance';
import { undercutOf } from '../../src/lib/core/mesh/undercut';
import { blocks, box, frustum, mapped, sphere } from '../fixtures/mesh-solids';

describe('a height field', () => {
	test('of a ball grown by a ball is the field of the larger ball', () => {
		const field = grownField(heightFieldOf(sphere(20, 5), [0, 0, 1], 0.5, 5), 5);
		for (const [x, y] of [
			[0, 0],
			[10, 5],
			[-15, 12]
		] as const) {
			const exact = Math.sqrt(625 - x * x - y * y);
			expect(Math.abs(leastHeightNear(field, [x, y, 0]) - exact)).toBeLessThan(1.2);
		}
		const [x, y, z] = pointOver(field, 0, 0, 7);
		expect([Math.hypot(x, y) > 20, z]).toEqual([true, 7]);
	});
});

describe('the shell', () => {
	test('leaves a box, and a cone, straight up', () => {
		for (const mesh of [box(60, 40, 30), frustum(30, 15, 40, 48)]) {
			expect(shellOpening(mesh, 6)).toMatchObject({
				isFree: true,
				direction: [0, 0, 1],
				parted: null
			});
		}
	});

	test('leaves a block that leans in the direction it leans', () => {
		const leaned = mapped(box(40, 40, 40), ([x, y, z]) => [x + z * 0.8, y, z]);
		const { isFree, direction } = shellOpening(leaned, 3);
		expect(isFree).toBe(true);
		expect(direction[0]).toBeGreaterThan(0.4);
	});

	test('locks on a wheel with a belt groove and parts at an upright plane through the middle', () => {
		const { isFree, lockedFraction, lockedCm2, parted } = shellOpening(steppedPulley(), 3);
		expect(isFree).toBe(false);
		expect(lockedFraction).toBeGreaterThan(0.05);
		expect(Math.abs(parted!.plane.normal[2])).toBeLessThan(0.2);
		expect(Math.abs(parted!.plane.offsetMm)).toBeLessThan(4);
		expect(parted!.lockedMm2 / 100).toBeLessThan(lockedCm2 / 4);
	});

	test('is freed by a glove thick enough to fill a narrow groove', () => {
		const notched = blocks(
			[
				[0, 50, 60],
				[0, 40],
				[0, 15, 20, 40]
			],
			(i, _, k) => !(i === 1 && k === 1)
		);
		const thin = shellOpening(notched, 1);
		expect(thin.isFree).toBe(false);
		// Half of its 5 mm from either side, as near as it is looked for and the shadows are drawn.
		expect(thin.freeingGloveMm).toBeGreaterThanOrEqual(2.4);
		expect(thin.freeingGloveMm).toBeLessThan(3.1);
		expect(shellOpening(notched, thin.freeingGloveMm!).isFree).toBe(true);
	});

	test('asks for a third piece where three sides have a pocket each, and says where it goes', () => {
		const pocketed = blocks(
			[
				[0, 14, 30, 50, 66, 80],
				[0, 14, 30, 50, 80],
				[0, 20, 40, 60]
			],
			(i, j, k) => k !== 1 || !((j === 2 && (i === 0 || i === 4)) || (j === 0 && i === 2))
		);
		const { parted, thirdOutlines } = shellOpening(pocketed, 2);
		expect(parted!.lockedMm2 / 100).toBeLessThan(1);
		const { at, direction, areaMm2 } = parted!.third!;
		// Over the walls and the floor of one pocket, which it leaves straight.
		expect(areaMm2 / 100).toBeGreaterThan(5);
		expect(areaMm2 / 100).toBeLessThan(20);
		expect(Math.max(...direction.map(Math.abs))).toBeGreaterThan(0.9);
		expect(at[2]).toBeGreaterThan(18);
		expect(at[2]).toBeLessThan(42);
		// A line is drawn around it, which stays by its pocket of 20 mm height: all of it within 8 mm of the rim.
		expect(thirdOutlines.length).toBeGreaterThan(0);
		const heights = thirdOutlines.flatMap((line) => line.filter((_, i) => i % 3 === 2));
		expect(Math.min(...heights)).toBeGreaterThan(12);
		expect(Math.max(...heights)).toBeLessThan(48);
		const around = thirdOutlines.flatMap((line) =>
			Array.from({ length: line.length / 3 }, (_, i) =>
				Math.hypot(line[3 * i]! - at[0], line[3 * i + 1]! - at[1])
			)
		);
		expect(Math.max(...around)).toBeLessThan(30);
	});

	test('needs a glove', () => {
		expect(() => shellOpening(box(1, 1, 1), 0)).toThrow('above 0');
	});
});

describe('the glove', () => {
	test('of a cone that widens upward gives by the difference of the radii', () => {
		for (const lean of [2, 6, 12]) {
			const { depthMm, at } = undercutOf(new SurfaceDistance(frustum(20, 20 + lean, 30, 96)));
			expect(Math.abs(depthMm - lean)).toBeLessThan(0.5);
			expect(at![2]).toBeLessThan(3);
		}
	});

	test('has no undercut on a block, a ball on the board has half its radius and more', () => {
		expect(undercutOf(new SurfaceDistance(box(30, 30, 30)))).toEqual({
			depthMm: 0,
			at: null,
			areaCm2: 0
		});
		const ball = mapped(sphere(20, 4), ([x, y, z]) => [x, y, z + 20]);
		expect(undercutOf(new SurfaceDistance(ball)).depthMm).toBeGreaterThan(15);
	});

	test('stretches by the ratio of the rings', () => {
		const { fraction, zMm } = stretchOf(frustum(20, 30, 30, 96));
		expect(Math.abs(fraction - 0.5)).toBeLessThan(0.03);
		expect(zMm).toBeLessThan(1);
		expect(standsStretch({ fraction, zMm }, 3)).toBe(true);
		expect(standsStretch({ fraction, zMm }, 1)).toBe(false);
		expect(stretchOf(frustum(30, 20, 30, 96)).fraction).toBe(0);
	});
});
