import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conversionRatePerS, timeToConversionS } from '../../src/lib/core/laws/autocatalytic-cure';
import { equivalentTimeS, reachedAfterS } from '../../src/lib/core/laws/cure-profile';
import {
	activationEnergyKjPerMol,
	cureRateFrom,
	timeAtTemperatureS,
	type CureRate
} from '../../src/lib/core/laws/cure-rate';
import { cureWindowS } from '../../src/lib/core/laws/cure-window';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rate = fc.oneof(
	real(20, 120).map((kj): CureRate => ({ kind: 'arrhenius', activationEnergyKjPerMol: kj })),
	real(1.2, 4).map((factor): CureRate => ({ kind: 'q10', factor }))
);
const profile = fc
	.array(fc.tuple(real(0, 20_000), real(5, 45)), { minLength: 1, maxLength: 6 })
	.map((points) => {
		let atS = 0;
		return points.map(([afterS, temperatureC]) => ({ atS: (atS += afterS), temperatureC }));
	});

describe('cure and temperature', () => {
	test('warmer is never slower', () => {
		fc.assert(
			fc.property(rate, real(-5, 40), real(0, 20), (given, temperatureC, moreK) => {
				const sheet = { timeS: 3600, temperatureC: 23 };
				const cold = timeAtTemperatureS(sheet, temperatureC, given);
				expect(timeAtTemperatureS(sheet, temperatureC + moreK, given)).toBeLessThanOrEqual(cold);
			})
		);
	});

	test('there and back again is the same time', () => {
		fc.assert(
			fc.property(rate, real(5, 45), (given, temperatureC) => {
				const thereS = timeAtTemperatureS({ timeS: 3600, temperatureC: 23 }, temperatureC, given);
				const backS = timeAtTemperatureS({ timeS: thereS, temperatureC }, 23, given);
				expect(backS).toBeCloseTo(3600, 6);
			})
		);
	});

	test('the two times of a sheet are met by the rate made from them', () => {
		const points = [
			{ timeS: 7200, temperatureC: 18 },
			{ timeS: 2400, temperatureC: 30 }
		] as const;
		const made = cureRateFrom(points);
		expect(timeAtTemperatureS(points[0], 30, made)).toBeCloseTo(2400, 6);
		expect(activationEnergyKjPerMol([points[1], points[0]])).toBeCloseTo(
			activationEnergyKjPerMol(points),
			9
		);
		expect(cureRateFrom(points.slice(0, 1))).toEqual({ kind: 'q10', factor: 2 });
	});

	test('a sheet that cures slower when warm is refused', () => {
		const points = [
			{ timeS: 1000, temperatureC: 18 },
			{ timeS: 2000, temperatureC: 30 }
		] as const;
		expect(() => activationEnergyKjPerMol(points)).toThrow(/activation energy/);
		expect(() => cureRateFrom([points[0], { timeS: 900, temperatureC: 19 }])).toThrow(
			/difference of temperatures is 1/
		);
	});

	test.each([-11, 81, Number.NaN])('refuses %d °C', (temperatureC) => {
		expect(() =>
			timeAtTemperatureS({ timeS: 60, temperatureC: 23 }, temperatureC, { kind: 'q10', factor: 2 })
		).toThrow(RangeError);
	});
});

describe('a changing temperature', () => {
	test('equivalent time adds up and never runs backward', () => {
		fc.assert(
			fc.property(
				profile,
				rate,
				real(0, 80_000),
				real(0, 20_000),
				(points, given, untilS, moreS) => {
					const cure = { referenceC: 23, rate: given };
					const before = equivalentTimeS(points, untilS, cure);
					expect(equivalentTimeS(points, untilS + moreS, cure)).toBeGreaterThanOrEqual(
						before * (1 - 1e-6)
					);
				}
			),
			{ numRuns: 50 }
		);
	});

	test('the end of a cure is where its equivalent time is reached', () => {
		fc.assert(
			fc.property(profile, rate, real(60, 40_000), (points, given, neededS) => {
				const cure = { referenceC: 23, rate: given };
				const endS = reachedAfterS(points, neededS, cure);
				if (endS === null) throw new Error('expected an end');
				expect(equivalentTimeS(points, endS, cure) / neededS).toBeCloseTo(1, 5);
			}),
			{ numRuns: 30 }
		);
	});

	test('a shop that stays too cold for 60 days has no end to tell', () => {
		const cure = { referenceC: 23, rate: { kind: 'q10', factor: 6 } as const };
		expect(reachedAfterS([{ atS: 0, temperatureC: -10 }], 59 * 86_400, cure)).toBeNull();
	});

	test('integrated is not averaged: a swing cures faster than its mean', () => {
		const cure = { referenceC: 20, rate: { kind: 'q10', factor: 2 } as const };
		const swing = [
			{ atS: 0, temperatureC: 30 },
			{ atS: 36_000, temperatureC: 10 }
		];
		expect(equivalentTimeS(swing, 36_000, cure)).toBeGreaterThan(36_000);
	});

	test('points out of order are refused', () => {
		const points = [
			{ atS: 100, temperatureC: 20 },
			{ atS: 50, temperatureC: 20 }
		];
		expect(() =>
			equivalentTimeS(points, 200, { referenceC: 20, rate: { kind: 'q10', factor: 2 } })
		).toThrow(/profile\[1\].atS is 50/);
	});
});

describe('a window', () => {
	const sheet = { openS: 2700, shutS: 14_400, temperatureC: 23 };
	const q10: CureRate = { kind: 'q10', factor: 2 };

	test('at the sheet’s temperature is that of the sheet', () => {
		const room = { temperatureC: 23, spreadK: 0 };
		expect(cureWindowS(sheet, room, q10)).toEqual({ openS: 2700, shutS: 14_400, isOpen: true });
		expect(cureWindowS({ ...sheet, shutS: null }, room, q10).shutS).toBeNull();
	});

	test('only narrows as the room’s temperature is less certain, and says when nothing is left', () => {
		const at = (spreadK: number) => cureWindowS(sheet, { temperatureC: 23, spreadK }, q10);
		expect(at(3).openS).toBeGreaterThan(at(0).openS);
		expect(at(3).shutS).toBeLessThan(14_400);
		const narrow = cureWindowS({ ...sheet, shutS: 3600 }, { temperatureC: 23, spreadK: 5 }, q10);
		expect(narrow.isOpen).toBe(false);
	});
});

test('the time to a conversion grows by one over the rate law’s speed there', () => {
	fc.assert(
		fc.property(
			real(0.001, 0.99),
			real(1e-5, 0.1),
			real(0.005, 0.5),
			(conversion, kPerS, startTerm) => {
				const at = (a: number) => timeToConversionS({ conversion: a, kPerS, startTerm });
				const h = 1e-5;
				const slope = (at(conversion + h) - at(conversion - h)) / (2 * h);
				const speed = conversionRatePerS(conversion, kPerS, startTerm);
				expect(slope * speed).toBeCloseTo(1, 3);
			}
		)
	);
});
