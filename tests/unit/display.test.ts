import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { displayQuantity, displayValue, numberText } from '../../src/lib/core/quantity/display';
import { durationText } from '../../src/lib/core/quantity/duration-text';
import { UNITS } from '../../src/lib/core/quantity/unit';

describe('a quantity as a person reads it', () => {
	test.each([
		[160, 'g', 'SI', '160 g'],
		[166.66, 'g', 'SI', '166.7 g'],
		[1234.5, 'g', 'SI', '1,234.5 g'],
		[0.05, 'g', 'SI', '0.05 g'],
		[12_345, 'g', 'SI', '12.35 kg'],
		[100, 'g', 'US', '100 g (3.53 oz)'],
		[2000, 'g', 'US', '2,000 g (4.41 lb)'],
		[45_359.237, 'g', 'US', '100 lb'],
		[25.4, 'mm', 'US', '1 in'],
		[0.5, 'mm', 'US', '0.0197 in'],
		[1250, 'mm', 'SI', '1,250 mm'],
		[2500, 'mm', 'SI', '2.5 m'],
		[9290.304, 'cm2', 'US', '10 ft²'],
		[25_000, 'cm2', 'SI', '2.5 m²'],
		[3785.411784, 'mL', 'US', '1 gal'],
		[1500, 'mL', 'SI', '1.5 L'],
		[20, 'C', 'US', '68 °F'],
		[3, 'K', 'US', '5.4 °F'],
		[-5, 'C', 'SI', '−5 °C'],
		[0.85, 'fraction', 'SI', '85%'],
		[5, 'count', 'SI', '5'],
		[12.5, 'currency', 'SI', '12.50'],
		[0.3, 'Pa·s', 'US', '300 cP'],
		[2700, 's', 'SI', '45 min'],
		[Number.NaN, 'g', 'SI', '—']
	] as const)('%d %s in %s reads %s', (value, unit, system, text) => {
		expect(displayQuantity(value, unit, system)).toBe(text);
	});

	test.each([
		[0, '0 s'],
		[45, '45 s'],
		[570, '9 min 30 s'],
		[540, '9 min'],
		[3600, '1 h'],
		[3599.9, '59 min'],
		[11_519, '3 h 11 min'],
		[2090, '34 min'],
		[45_000, '12 h 30 min'],
		[129_600, '36 h'],
		[187_200, '2 d 4 h'],
		[187_199, '2 d 3 h 59 min'],
		[-60, '−1 min'],
		[Number.POSITIVE_INFINITY, '—']
	])('%d seconds read "%s"', (durationS, text) => {
		expect(durationText(durationS)).toBe(text);
	});

	test('whole numbers are never cut', () => {
		expect(numberText(123_456, 3)).toBe('123,456');
		expect(numberText(-0.0001, 3)).toBe('−0.0001');
		expect(numberText(-0)).toBe('0');
	});

	test('every unit reads as something in both systems, whatever the number', () => {
		fc.assert(
			fc.property(
				fc.double({ min: -1e9, max: 1e9, noNaN: true }),
				fc.constantFrom(...UNITS),
				fc.constantFrom('SI' as const, 'US' as const),
				(value, unit, system) => {
					const { text, value: shown } = displayValue(value, unit, system);
					expect(Number.isFinite(shown)).toBe(true);
					expect(text).toMatch(/^−?[\d,.]+/);
				}
			)
		);
	});
});

test('a value beside another is told in the unit of that one', () => {
	expect(displayQuantity(9971.8, 'g', 'SI')).toBe('9,971.8 g');
	expect(displayQuantity(9971.8, 'g', 'SI', 11_163)).toBe('9.972 kg');
});
