import fc from 'fast-check';
import { expect, test } from 'vitest';
import { simplifyLine } from '../../../src/lib/core/geometry/simplify-line';

test('what lies on a straight line is left out, corners and ends stay', () => {
	const line = [
		{ xMm: 0, yMm: 0 },
		{ xMm: 1, yMm: 0.01 },
		{ xMm: 2, yMm: 0 },
		{ xMm: 2, yMm: 1 },
		{ xMm: 2, yMm: 2 }
	];
	expect(simplifyLine(line, 0.1)).toEqual([line[0], line[2], line[4]]);
	expect(simplifyLine(line, 0.001)).toEqual([line[0], line[1], line[2], line[4]]);
});

test('a closed line keeps the point that is farthest from its start', () => {
	const square = [
		{ xMm: 0, yMm: 0 },
		{ xMm: 1, yMm: 0 },
		{ xMm: 1, yMm: 1 },
		{ xMm: 0, yMm: 1 },
		{ xMm: 0, yMm: 0 }
	];
	expect(simplifyLine(square, 0.1)).toEqual(square);
});

// A chord of a circle lies inside its arc by r (1 − cos(half its angle)).
test('a circle keeps as many chords as the tolerance asks for, and no more than twice', () => {
	const radius = 100;
	const tolerance = 0.1;
	const circle = Array.from({ length: 1441 }, (_, i) => ({
		xMm: radius * Math.cos((i * Math.PI) / 720),
		yMm: radius * Math.sin((i * Math.PI) / 720)
	}));
	const least = Math.PI / Math.acos(1 - tolerance / radius);
	const chords = simplifyLine(circle, tolerance).length - 1;
	expect(chords).toBeGreaterThanOrEqual(Math.floor(least));
	expect(chords).toBeLessThanOrEqual(2 * least);
});

const point = fc.record({
	xMm: fc.double({ min: -500, max: 500, noNaN: true }),
	yMm: fc.double({ min: -500, max: 500, noNaN: true })
});

test('no point is farther from what is left than the tolerance', () => {
	fc.assert(
		fc.property(fc.array(point, { minLength: 2, maxLength: 40 }), (line) => {
			const left = simplifyLine(line, 5);
			expect(left[0]).toBe(line[0]);
			expect(left.at(-1)).toBe(line.at(-1));
			for (const { xMm, yMm } of line) {
				const offs = left.slice(1).map((b, i) => {
					const a = left[i]!;
					const length2 = (b.xMm - a.xMm) ** 2 + (b.yMm - a.yMm) ** 2;
					const along = (xMm - a.xMm) * (b.xMm - a.xMm) + (yMm - a.yMm) * (b.yMm - a.yMm);
					const t = length2 === 0 ? 0 : Math.max(0, Math.min(1, along / length2));
					return Math.hypot(xMm - a.xMm - t * (b.xMm - a.xMm), yMm - a.yMm - t * (b.yMm - a.yMm));
				});
				expect(Math.min(...offs)).toBeLessThanOrEqual(5 + 1e-9);
			}
		})
	);
});
