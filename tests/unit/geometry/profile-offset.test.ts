import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { offsetProfile, type PointMm } from '../../../src/lib/core/geometry/profile-offset';

const p = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });
const onBoard = (...profile: PointMm[]) => [p(-200, 0), ...profile, p(200, 0)];
const box = (w: number, h: number) => onBoard(p(-w / 2, 0), p(-w / 2, h), p(w / 2, h), p(w / 2, 0));

function areaUnderMm2(line: PointMm[]): number {
	return line
		.slice(1)
		.reduce((sum, b, i) => sum + ((b.xMm - line[i]!.xMm) * (b.yMm + line[i]!.yMm)) / 2, 0);
}

function distanceMm(point: PointMm, line: PointMm[]): number {
	return Math.min(
		...line.slice(1).map((b, i) => {
			const a = line[i]!;
			const dx = b.xMm - a.xMm;
			const dy = b.yMm - a.yMm;
			const t = ((point.xMm - a.xMm) * dx + (point.yMm - a.yMm) * dy) / (dx * dx + dy * dy);
			const s = Math.max(0, Math.min(1, t));
			return Math.hypot(point.xMm - a.xMm - s * dx, point.yMm - a.yMm - s * dy);
		})
	);
}

describe('a coat of even thickness over a profile', () => {
	test('over a box fills what the sides, the top and two quarter circles fill', () => {
		const d = 10;
		const coat = offsetProfile(box(100, 60), d);
		// Plane geometry: flange 2(150 − d)d, walls 2·60·d, top 100·d, corners 2·πd²/4.
		const expected = 2 * (150 - d) * d + 2 * 60 * d + 100 * d + (Math.PI * d * d) / 2;
		const got = areaUnderMm2(coat) - 100 * 60;
		expect(Math.abs(got - expected)).toBeLessThan(0.01 * Math.PI * d * d);
	});

	test('over a dome is a dome larger by the coat', () => {
		const r = 50;
		const dome = Array.from({ length: 61 }, (_, i) => {
			const a = Math.PI - (Math.PI * i) / 60;
			return p(r * Math.cos(a), r * Math.sin(a));
		});
		const top = offsetProfile(dome, 6);
		for (const { xMm, yMm } of top) expect(Math.hypot(xMm, yMm)).toBeCloseTo(56, 0);
	});

	test('closes a groove narrower than twice the coat', () => {
		const grooved = onBoard(
			p(-50, 0),
			p(-50, 40),
			p(-4, 40),
			p(-4, 10),
			p(4, 10),
			p(4, 40),
			p(50, 40),
			p(50, 0)
		);
		const coat = offsetProfile(grooved, 6);
		const overGroove = coat.filter(({ xMm }) => Math.abs(xMm) < 3);
		for (const { yMm } of overGroove) expect(yMm).toBeGreaterThan(40);
	});

	test('stays open in a groove wider than twice the coat', () => {
		const grooved = onBoard(
			p(-50, 0),
			p(-50, 40),
			p(-20, 40),
			p(-20, 10),
			p(20, 10),
			p(20, 40),
			p(50, 40),
			p(50, 0)
		);
		const lowest = Math.min(
			...offsetProfile(grooved, 6)
				.filter(({ xMm }) => Math.abs(xMm) < 15)
				.map(({ yMm }) => yMm)
		);
		expect(lowest).toBeCloseTo(16, 6);
	});

	test('ends square above the board, where the flange ends', () => {
		const coat = offsetProfile(box(100, 60), 7);
		expect(coat[0]).toEqual(p(-200, 7));
		expect(coat.at(-1)!.xMm).toBeCloseTo(200, 9);
		expect(coat.at(-1)!.yMm).toBeCloseTo(7, 9);
	});

	test('lies nowhere nearer to any profile than its thickness, less the chord of a round join', () => {
		const step = fc.record({
			runMm: fc.integer({ min: 3, max: 40 }),
			yMm: fc.integer({ min: 0, max: 80 })
		});
		fc.assert(
			fc.property(
				fc.array(step, { minLength: 1, maxLength: 12 }),
				fc.integer({ min: 1, max: 25 }),
				(steps, d) => {
					let x = 0;
					const profile = [
						p(-100, 0),
						p(0, 0),
						...steps.map(({ runMm, yMm }) => p((x += runMm), yMm)),
						p(x + 10, 0),
						p(x + 110, 0)
					];
					const coat = offsetProfile(profile, d);
					expect(coat[0]).toEqual(p(-100, d));
					expect(coat.at(-1)!.xMm).toBeCloseTo(x + 110, 6);
					for (const point of coat) {
						expect(point.yMm).toBeGreaterThanOrEqual(d * 0.99);
						expect(distanceMm(point, profile)).toBeGreaterThanOrEqual(d * 0.985);
						expect(distanceMm(point, profile)).toBeLessThanOrEqual(d * 1.0001);
					}
					for (const [i, b] of coat.slice(1).entries()) {
						const middle = p((coat[i]!.xMm + b.xMm) / 2, (coat[i]!.yMm + b.yMm) / 2);
						expect(distanceMm(middle, profile)).toBeGreaterThanOrEqual(d * 0.985);
					}
				}
			)
		);
	});

	test.each([-1, Number.NaN, Infinity])('refuses a thickness of %s and says why', (d) => {
		expect(() => offsetProfile(box(10, 10), d)).toThrow(/distanceMm is .*; accepted: 0 or more/);
	});

	test('refuses a profile of one point', () => {
		expect(() => offsetProfile([p(1, 1), p(1, 1)], 2)).toThrow(/1 different points/);
	});
});
