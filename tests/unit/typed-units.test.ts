import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inCoreUnits, typedUnitOf } from '../../src/lib/core/process/typed-units';
import { withCustomary } from '../../src/lib/core/quantity/with-customary';

describe('readings in a shop of US customary units', () => {
	// Source: NIST SP 811 (2008), app. B.8: 1 in = 25.4 mm and t/°C = (t/°F - 32)/1.8, both exact.
	test('are kept in mm and °C, exactly', () => {
		const typed = { type: 'room.read', temperatureC: 72.5, surfaceC: 59, humidityPct: 45 };
		expect(inCoreUnits(typed, 'US')).toEqual({ ...typed, temperatureC: 22.5, surfaceC: 15 });
		const points = [{ place: 'North wall', thicknessMm: 0.19 }];
		expect(inCoreUnits({ points }, 'US')).toEqual({
			points: [{ place: 'North wall', thicknessMm: 4.826 }]
		});
	});

	test('leave grams, Shore A, counts, words and ticks alone', () => {
		const data = {
			massG: 12.5,
			massesG: { A: 100 },
			shoreA: 30,
			coats: 2,
			lot: 'C',
			sdsRead: true
		};
		expect(inCoreUnits(data, 'US')).toEqual(data);
	});

	test('are refused by the schema when they were no numbers', () => {
		expect(inCoreUnits({ gapMm: Number.NaN }, 'US').gapMm).toBeNaN();
	});

	test('stand beside the metric ones in what the bench says', () => {
		expect(withCustomary('at least 4.8 mm.', 'US')).toBe('at least 0.189 in (4.8 mm).');
		expect(withCustomary('the room is 9 °C; the data sheet asks for 18 to 25 °C', 'US')).toBe(
			'the room is 48.2 °F (9 °C); the data sheet asks for 64.4 °F to 77 °F (18 to 25 °C)'
		);
		expect(withCustomary('a 500 mL cup', 'US')).toBe('a 16.9 fl oz (500 mL) cup');
		expect(withCustomary('Weigh 120.5 g', 'US')).toBe('Weigh 120.5 g');
		expect(withCustomary('planned 12 mm', 'SI')).toBe('planned 12 mm');
	});
});

test('an SI shop’s readings are taken as typed', () => {
	const data = { gapMm: 12, temperatureC: 22 };
	expect(inCoreUnits(data, 'SI')).toEqual(data);
	expect(typedUnitOf('g', 'US')).toBeNull();
});

test('a length goes to the core and back to the thousandth', () => {
	const inch = typedUnitOf('mm', 'US');
	fc.assert(
		fc.property(fc.integer({ min: 1, max: 4000 }), (thousandths) => {
			const kept = Number(inCoreUnits({ gapMm: thousandths / 1000 }, 'US').gapMm);
			expect(inch?.fromCore(kept)).toBeCloseTo(thousandths / 1000, 9);
		})
	);
});
