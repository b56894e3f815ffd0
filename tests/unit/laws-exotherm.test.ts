import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { largestCalmCupG } from '../../src/lib/core/laws/calm-cup';
import type { Body } from '../../src/lib/core/laws/cooling-rate';
import { cureCurve } from '../../src/lib/core/laws/exotherm';
import {
	bodyCurve,
	calibratedKPerS,
	peakMoment,
	workableS,
	type CuringMaterial
} from '../../src/lib/core/laws/mass-effect';

/** An invented urethane paste: 9 minutes in a cup of 300 g at 23 °C. */
const paste: CuringMaterial = {
	densityGPerMl: 1.2,
	heatJPerG: 150,
	specificHeatJPerGK: 1.7,
	rate: { kind: 'arrhenius', activationEnergyKjPerMol: 55 },
	potLife: { timeS: 540, massG: 300, temperatureC: 23 }
};
const cup = (massG: number): Body => ({ kind: 'cup', massG });

describe('a curing mass', () => {
	test('the calibrated cup meets the sheet’s pot life', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 120, max: 7200, noNaN: true }),
				fc.double({ min: 50, max: 2000, noNaN: true }),
				fc.double({ min: 0, max: 400, noNaN: true }),
				(timeS, massG, heatJPerG) => {
					const material = { ...paste, heatJPerG, potLife: { timeS, massG, temperatureC: 23 } };
					expect(workableS(material, cup(massG), 23) / timeS).toBeCloseTo(1, 2);
				}
			),
			{ numRuns: 15 }
		);
	});

	test('more mass is hotter and works for a shorter time; a film stays cool and works longest', () => {
		const k = calibratedKPerS(paste);
		const bodies: Body[] = [{ kind: 'film', thicknessMm: 1 }, cup(50), cup(300), cup(2000)];
		const peaks = bodies.map((body) => peakMoment(paste, body, 23, k).temperatureC);
		const times = bodies.map((body) => workableS(paste, body, 23, k));
		expect(peaks).toEqual([...peaks].sort((a, b) => a - b));
		expect(times).toEqual([...times].sort((a, b) => b - a));
		expect(peaks[0]).toBeLessThan(40);
		expect(Math.max(...peaks)).toBeLessThan(23 + 150 / 1.7);
	});

	test('a warm shop shortens the pot life of every cup', () => {
		expect(workableS(paste, cup(300), 30)).toBeLessThan(workableS(paste, cup(300), 18));
	});

	test('conversion only grows and no moment is out of bounds', () => {
		const curve = bodyCurve(paste, cup(1000), 23, 7200);
		expect(curve.at(-1)?.atS).toBeCloseTo(7200, 6);
		curve.forEach((moment, i) => {
			const before = curve[i - 1];
			if (before) expect(moment.atS).toBeGreaterThan(before.atS);
			if (before) expect(moment.conversion).toBeGreaterThanOrEqual(before.conversion);
			expect(moment.conversion).toBeLessThanOrEqual(1);
			expect(moment.temperatureC).toBeGreaterThanOrEqual(23 - 1e-9);
		});
	});

	test('the largest calm cup keeps the limit and one a tenth larger does not', () => {
		const slow = { ...paste, potLife: { ...paste.potLife, timeS: 1800 } };
		const largestG = largestCalmCupG(slow, 23, { peakC: 95, searchUpToG: 20_000 });
		if (largestG === null) throw new Error('expected a cup');
		expect(peakMoment(slow, cup(largestG), 23).temperatureC).toBeLessThanOrEqual(95);
		expect(peakMoment(slow, cup(largestG * 1.1), 23).temperatureC).toBeGreaterThan(95);
		const mild = { ...paste, heatJPerG: 20 };
		expect(largestCalmCupG(mild, 23, { peakC: 95, searchUpToG: 5000 })).toBe(5000);
		const fierce = { ...paste, heatJPerG: 900, potLife: { ...paste.potLife, timeS: 60 } };
		expect(largestCalmCupG(fierce, 23, { peakC: 24, searchUpToG: 5000 })).toBeNull();
	});

	test('what cannot be is refused', () => {
		expect(() => bodyCurve(paste, cup(0), 23, 100)).toThrow(/massG is 0/);
		expect(() => bodyCurve(paste, cup(100), 200, 100)).toThrow(/temperatureC is 200/);
		expect(() => bodyCurve({ ...paste, heatJPerG: 1e308 }, cup(100), 23, 100)).toThrow(RangeError);
		expect(() => bodyCurve(paste, cup(100), 23, Number.NaN)).toThrow(RangeError);
		const mass = {
			kPerS: 1,
			referenceC: 23,
			rate: paste.rate,
			heatJPerG: 1,
			specificHeatJPerGK: 2,
			startC: 23,
			roomC: 23,
			coolingPerS: -1
		};
		expect(() => cureCurve(mass, 10)).toThrow(/coolingPerS is -1/);
	});
});
