import { describe, expect, test } from 'vitest';
import { NARROWEST_BRUSH } from '../../src/lib/core/geometry/brush';
import { unreachedOf } from '../../src/lib/core/mesh/unreached';
import { bored, bottle, slotted } from '../fixtures/mesh-recesses';
import { box, mapped, together } from '../fixtures/mesh-solids';

const brush = NARROWEST_BRUSH;
/** How deep in a hole of this radius the tips reach: the ball that stands for the brush rests on its rim. */
const reachedMm = (radius: number): number => {
	const ball = brush.widthMm / 2;
	return Math.sqrt((brush.reachMm + ball) ** 2 - radius ** 2) - Math.sqrt(ball ** 2 - radius ** 2);
};

describe('what no brush reaches', () => {
	test.each([
		[1, 25],
		[0.3, 15]
	])(
		'a blind hole of radius %d mm, %d mm deep, below the tips of the bristles',
		(radius, depth) => {
			const { areaCm2, places } = unreachedOf(bored(30, radius, depth, 48), brush);
			const formula = 2 * Math.PI * radius * (depth - reachedMm(radius)) + Math.PI * radius ** 2;
			// A polygon of 48 sides has 0.1 % less around it, the rest is in the depths.
			expect(Math.abs(100 * areaCm2 - formula)).toBeLessThan(0.005 * formula);
			expect(places).toHaveLength(1);
			expect(places[0]!.widthMm).toBeCloseTo(2 * radius, 1);
			expect(places[0]!.zMm).toBeCloseTo(30 - depth, 6);
		}
	);

	test('nothing of a hole that the brush goes into, of one that its tips fill, of a plain box', () => {
		for (const mesh of [bored(30, 2, 25, 24), bored(30, 1, 8, 24), box(20, 15, 10)]) {
			expect(unreachedOf(mesh, brush)).toEqual({
				brush,
				areaCm2: 0,
				places: [],
				unlistedPlaces: 0
			});
		}
	});

	test('a hollow behind a neck too narrow for it, though it would fit inside', () => {
		const { areaCm2, places } = unreachedOf(bottle(1), brush);
		const inside = 2 * Math.PI * 10 * 20 + 2 * Math.PI * 100;
		expect(areaCm2).toBeCloseTo(inside / 100, 0);
		expect(places).toHaveLength(1);
		expect(places[0]!.widthMm).toBeGreaterThan(brush.widthMm);
		expect(unreachedOf(bottle(3), brush).areaCm2).toBe(0);
	});

	test('both ends of a long slot and several holes, each a place of its own', () => {
		const deep = slotted(2, 15, 40);
		const two = together(
			deep,
			mapped(deep, ([x, y, z]) => [x + 60, y, z])
		);
		const { places, areaCm2 } = unreachedOf(two, brush);
		expect(places).toHaveLength(2);
		expect(places.map(({ number }) => number)).toEqual([1, 2]);
		expect(areaCm2).toBeCloseTo(2 * places[0]!.areaCm2, 2);
	});

	test('a wider brush leaves out more, one with longer bristles less', () => {
		const hole = bored(30, 2, 25, 24);
		expect(unreachedOf(hole, { widthMm: 6, reachMm: 10 }).areaCm2).toBeGreaterThan(1);
		expect(unreachedOf(hole, { widthMm: 6, reachMm: 50 }).areaCm2).toBe(0);
	});
});
