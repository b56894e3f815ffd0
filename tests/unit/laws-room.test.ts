import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	dewPointC,
	saturationPressurePa,
	surfaceMargin,
	waterVaporPressurePa
} from '../../src/lib/core/laws/dew-point';
import { filmDryingS, waterEvaporationGPerM2H } from '../../src/lib/core/laws/drying';
import { absoluteHumidityGPerM3, moistureWarning } from '../../src/lib/core/laws/humidity';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const air = fc.record({ temperatureC: real(-5, 45), humidityPct: real(5, 99) });

describe('the room', () => {
	test('the dew point is never above the air and has the air’s vapor pressure', () => {
		fc.assert(
			fc.property(air, (given) => {
				const dewC = dewPointC(given);
				expect(dewC).toBeLessThanOrEqual(given.temperatureC + 1e-9);
				expect(saturationPressurePa(dewC) / waterVaporPressurePa(given)).toBeCloseTo(1, 9);
			})
		);
		expect(dewPointC({ temperatureC: 20, humidityPct: 100 })).toBeCloseTo(20, 9);
	});

	test('damper air holds more water, loses less to it and dries a film later', () => {
		fc.assert(
			fc.property(real(10, 35), real(10, 90), real(1, 9), (temperatureC, humidityPct, more) => {
				const dry = { temperatureC, humidityPct };
				const damp = { temperatureC, humidityPct: humidityPct + more };
				expect(absoluteHumidityGPerM3(damp)).toBeGreaterThan(absoluteHumidityGPerM3(dry));
				expect(waterEvaporationGPerM2H(damp, 0.2)).toBeLessThan(waterEvaporationGPerM2H(dry, 0.2));
				const film = { wetMm: 0.06, waterFraction: 0.9 };
				const dryS = filmDryingS(film, dry);
				const dampS = filmDryingS(film, damp);
				if (!dryS || !dampS) throw new Error('expected both to dry');
				expect(dampS.lowS).toBeGreaterThan(dryS.lowS);
				expect(dryS.highS / dryS.lowS).toBeCloseTo(3, 9);
			})
		);
	});

	test('moving air dries faster; saturated air never dries', () => {
		const film = { wetMm: 0.06, waterFraction: 0.9 };
		const room = { temperatureC: 22, humidityPct: 50 };
		expect(filmDryingS(film, room, 1)?.highS).toBeLessThan(
			filmDryingS(film, room, 0.1)?.highS ?? 0
		);
		expect(filmDryingS(film, { ...room, humidityPct: 100 })).toBeNull();
	});

	test('saturated air takes and gives nothing, at any temperature', () => {
		fc.assert(
			fc.property(real(-19, 49), real(0, 3), (temperatureC, airSpeedMPerS) => {
				expect(waterEvaporationGPerM2H({ temperatureC, humidityPct: 100 }, airSpeedMPerS)).toBe(0);
			})
		);
	});

	test('a margin of three kelvin is enough, less is not', () => {
		const room = { temperatureC: 20, humidityPct: 50 };
		const dewC = dewPointC(room);
		expect(surfaceMargin(room, dewC + 3.001).isEnough).toBe(true);
		expect(surfaceMargin(room, dewC + 2.999).isEnough).toBe(false);
	});

	test.each([
		[20, 30, 'fit'],
		[20, 55, 'caution'],
		[28, 40, 'caution'],
		[20, 80, 'stop'],
		[32, 60, 'stop']
	] as const)(
		'air of %d °C and %d %% is %s for a urethane',
		(temperatureC, humidityPct, verdict) => {
			expect(moistureWarning({ temperatureC, humidityPct })).toBe(verdict);
		}
	);

	test.each([
		[20, 0],
		[20, 101],
		[60, 50],
		[Number.NaN, 50]
	])('refuses air of %d °C and %d %%', (temperatureC, humidityPct) => {
		expect(() => dewPointC({ temperatureC, humidityPct })).toThrow(RangeError);
	});
});
