import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	roundDownTo,
	roundTo,
	roundToReadability,
	roundUpTo,
	uncertaintyAfterRounding
} from '../../src/lib/core/quantity/rounding';

const values = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const steps = fc.constantFrom(0.001, 0.01, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10);

describe('rounding to a step', () => {
	test('moves a value by no more than half a step', () => {
		fc.assert(
			fc.property(values, steps, (value, step) => {
				expect(Math.abs(roundTo(value, step) - value)).toBeLessThanOrEqual(step / 2 + 1e-6);
			})
		);
	});

	test('a rounded value stays where it is', () => {
		fc.assert(
			fc.property(values, steps, (value, step) => {
				const once = roundTo(value, step);
				expect(roundTo(once, step)).toBe(once);
				expect(roundUpTo(once, step)).toBe(once);
				expect(roundDownTo(once, step)).toBe(once);
			})
		);
	});

	test('up never lowers and down never raises', () => {
		fc.assert(
			fc.property(values, steps, (value, step) => {
				// A quotient is held to twelve digits, so a hair below the step counts as on it.
				const hair = 1e-11 * Math.max(1, Math.abs(value));
				expect(roundUpTo(value, step)).toBeGreaterThanOrEqual(value - hair);
				expect(roundDownTo(value, step)).toBeLessThanOrEqual(value + hair);
			})
		);
	});

	test('rounding never shrinks an uncertainty, and matters less the finer it is', () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 100, noNaN: true }), steps, (uncertainty, step) => {
				const after = uncertaintyAfterRounding(uncertainty, step);
				expect(after).toBeGreaterThanOrEqual(uncertainty);
				expect(uncertaintyAfterRounding(uncertainty, step / 2)).toBeLessThanOrEqual(after);
			})
		);
		expect(uncertaintyAfterRounding(0, 0.1)).toBeCloseTo(0.0289, 4);
	});

	test('what a scale shows has no stray digits', () => {
		expect(roundToReadability(123.45, 0.1)).toBe(123.5);
		expect(String(roundToReadability(0.1 + 0.2, 0.1))).toBe('0.3');
		expect(Object.is(roundTo(-0.01, 0.1), 0)).toBe(true);
	});

	test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308])('refuses %d', (value) => {
		expect(() => roundTo(value, 0.1)).toThrow(RangeError);
	});

	test('refuses a step of zero or less', () => {
		expect(() => roundTo(1, 0)).toThrow(/step is 0; accepted/);
		expect(() => roundUpTo(1, -1)).toThrow(RangeError);
	});
});
