import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { timeToConversionS } from '../../src/lib/core/laws/autocatalytic-cure';
import { brushBackS } from '../../src/lib/core/laws/brush-back';
import { mixedMassG } from '../../src/lib/core/laws/coat-losses';
import { coatThicknessesMm } from '../../src/lib/core/laws/coat-profile';
import { coatedAreaCm2, coatVolumeMl } from '../../src/lib/core/laws/coat-volume';
import { coolingPerS } from '../../src/lib/core/laws/cooling-rate';
import { correction, cupFill } from '../../src/lib/core/laws/correction';
import { cupPace } from '../../src/lib/core/laws/cup-pace';
import { cupsG, largestCupG, layingRateGPerMin } from '../../src/lib/core/laws/cups';
import { equivalentTimeS } from '../../src/lib/core/laws/cure-profile';
import { timeAtTemperatureS } from '../../src/lib/core/laws/cure-rate';
import { saturationPressurePa } from '../../src/lib/core/laws/dew-point';
import { drainedFilmMm, puddleDepthMm } from '../../src/lib/core/laws/drainage';
import { filmDryingS } from '../../src/lib/core/laws/drying';
import { filletVolumeMl, flangeVolumeMl } from '../../src/lib/core/laws/flange';
import { absoluteHumidityGPerM3 } from '../../src/lib/core/laws/humidity';
import { kitsToBuy } from '../../src/lib/core/laws/kits';
import { orderQuantity } from '../../src/lib/core/laws/order-quantity';
import { additionG, otherPartG, splitBatchG } from '../../src/lib/core/laws/proportioning';
import { readableSplit } from '../../src/lib/core/laws/readable-split';
import { sagSpeedMmPerS } from '../../src/lib/core/laws/sag-flow';
import { largestHoldingMm, splitCoatsMm } from '../../src/lib/core/laws/sag';
import { mixedDensityGPerMl } from '../../src/lib/core/laws/volume-ratio';
import { ratioDeviationFraction } from '../../src/lib/core/laws/weighing-check';
import { smallestBatchG } from '../../src/lib/core/laws/weighing-uncertainty';

type Six = [a: number, b: number, c: number, d: number, e: number, f: number];

const arrhenius = { kind: 'arrhenius', activationEnergyKjPerMol: 55 } as const;
const film = (a: number, b: number, c: number, d: number) => ({
	initialMm: a,
	viscosityPaS: b,
	densityGPerMl: c,
	timeS: d
});

/** Each law with every number it takes drawn at will. */
const CALLS: Record<string, (...numbers: Six) => unknown> = {
	otherPartG: (a, b, c) => otherPartG({ knownG: a, knownParts: b, otherParts: c }),
	splitBatchG: (a, b, c) => splitBatchG({ batchG: a, parts: [b, c] }),
	additionG: (a, b) => additionG({ baseG: a, partsPerHundred: b }),
	mixedDensityGPerMl: (a, b, c, d) =>
		mixedDensityGPerMl({ massParts: [a, b], densitiesGPerMl: [c, d] }),
	correction: (a, b, c, d) => correction({ actualG: [a, b], parts: [c, d] }),
	cupFill: (a, b, c, d, e) => cupFill({ massesG: [a, b], densitiesGPerMl: [c, d], cupVolumeMl: e }),
	ratioDeviationFraction: (a, b, c, d) =>
		ratioDeviationFraction({ actualG: [a, b], parts: [c, d] }),
	smallestBatchG: (a, b, c, d) =>
		smallestBatchG({ readabilityG: a, parts: [b, c], toleranceFraction: d }),
	readableSplit: (a, b, c, d, e) =>
		readableSplit({ batchG: a, parts: [b, c], readabilityG: d, toleranceFraction: e }),
	coatVolumeMl: (a, b, c, d, e) =>
		coatVolumeMl(
			{
				areaCm2: a,
				edgeTurnMm: b,
				cornerTurnSr: c,
				insideEdges: [{ lengthMm: d, turnDeg: 90 }]
			},
			e
		),
	coatedAreaCm2: (a, b, c, d) => coatedAreaCm2({ areaCm2: a, edgeTurnMm: b, cornerTurnSr: c }, d),
	flangeVolumeMl: (a, b, c, d, e) =>
		flangeVolumeMl({
			outerAreaCm2: a,
			footAreaCm2: b,
			footPerimeterMm: c,
			coatThicknessMm: d,
			flangeThicknessMm: e
		}),
	filletVolumeMl: (a, b, c) => filletVolumeMl({ lengthMm: a, radiusMm: b, turnDeg: c }),
	mixedMassG: (a, b, c) => mixedMassG({ laidG: a, cups: b, brushes: c }),
	coatThicknessesMm: (a, b, c) => coatThicknessesMm({ targetMm: a, coats: b, firstMm: c }),
	orderQuantity: (a, b, c) =>
		orderQuantity({ needG: a, uncertaintyFraction: b, marginFraction: c }),
	kitsToBuy: (a, b, c, d, e) =>
		kitsToBuy({
			needG: a,
			kits: [
				{ massG: b, price: c },
				{ massG: d, price: e }
			]
		}),
	largestHoldingMm: (a, b, c) =>
		largestHoldingMm({ yieldStressPa: a, densityGPerMl: b, slopeDeg: c }),
	splitCoatsMm: (a, b, c) => splitCoatsMm({ thicknessesMm: [a, b], limitMm: c }),
	sagSpeedMmPerS: (a, b, c, d, e, f) =>
		sagSpeedMmPerS({
			thicknessMm: a,
			yieldStressPa: b,
			consistencyPaSn: c,
			flowIndex: d,
			densityGPerMl: e,
			slopeDeg: f
		}),
	drainedFilmMm: (a, b, c, d, e) => drainedFilmMm({ ...film(a, b, c, d), belowTopMm: e }),
	puddleDepthMm: (a, b, c, d, e, f) =>
		puddleDepthMm({ ...film(a, b, c, d), wallHeightMm: e, recessWidthMm: f, walls: 2 }),
	brushBackS: (a, b, c, d) =>
		brushBackS({ thicknessMm: a, viscosityPaS: b, densityGPerMl: c, gelTimeS: d }),
	layingRateGPerMin: (a, b, c) =>
		layingRateGPerMin({ cm2PerMin: a, thicknessMm: b, densityGPerMl: c }),
	largestCupG: (a, b, c, d) =>
		largestCupG({ workingTimeS: a, mixingTimeS: b, layingRateGPerMin: c, limitG: d }),
	cupsG: (a, b) => cupsG({ totalG: a, largestG: b }),
	cupPace: (a, b, c, d, e, f) =>
		cupPace({
			cupsG: [a, b],
			people: 1,
			hasMixer: true,
			mixingTimeS: c,
			workingTimeS: d,
			layingRateGPerMin: e,
			bondWindowS: f
		}).turns.map(({ emptyAtS }) => emptyAtS),
	timeAtTemperatureS: (a, b, c) => timeAtTemperatureS({ timeS: a, temperatureC: b }, c, arrhenius),
	equivalentTimeS: (a, b, c, d, e) =>
		equivalentTimeS(
			[
				{ atS: a, temperatureC: b },
				{ atS: c, temperatureC: d }
			],
			e,
			{ referenceC: 23, rate: arrhenius }
		),
	timeToConversionS: (a, b, c) => timeToConversionS({ conversion: a, kPerS: b, startTerm: c }),
	coolingPerS: (a, b, c) =>
		coolingPerS({ kind: 'cup', massG: a }, { densityGPerMl: b, specificHeatJPerGK: c }),
	saturationPressurePa: (a) => saturationPressurePa(a),
	absoluteHumidityGPerM3: (a, b) => absoluteHumidityGPerM3({ temperatureC: a, humidityPct: b }),
	filmDryingS: (a, b, c, d, e) =>
		filmDryingS({ wetMm: a / 10, waterFraction: b / 3 }, { temperatureC: c, humidityPct: d }, e)
};

/** Sensible sizes, wild ones and what a blank or broken field turns into. */
const input = fc.oneof(
	{ weight: 9, arbitrary: fc.integer({ min: 1, max: 3000 }).map((n) => n / 1000) },
	{ weight: 9, arbitrary: fc.integer({ min: 1, max: 90 }) },
	{ weight: 3, arbitrary: fc.integer({ min: 60, max: 20_000 }) },
	{ weight: 1, arbitrary: fc.double() },
	{
		weight: 1,
		arbitrary: fc.constantFrom(0, -0, -1, 1e308, Number.NaN, Number.POSITIVE_INFINITY, 5e-324)
	}
);

function numbersIn(value: unknown): number[] {
	if (typeof value === 'number') return [value];
	if (typeof value !== 'object' || value === null) return [];
	return Object.values(value).flatMap(numbersIn);
}

describe('whatever is typed, a law gives finite numbers of zero or more, or says what it accepts', () => {
	test.each(Object.entries(CALLS))('%s', (_, call) => {
		let answered = 0;
		fc.assert(
			fc.property(fc.tuple(input, input, input, input, input, input), (numbers) => {
				let result: unknown;
				try {
					result = call(...numbers);
				} catch (error) {
					expect(error).toBeInstanceOf(RangeError);
					expect((error as RangeError).message).toMatch(/accepted: /);
					return;
				}
				answered += 1;
				for (const each of numbersIn(result)) {
					expect(Number.isFinite(each)).toBe(true);
					expect(each).toBeGreaterThanOrEqual(0);
				}
			}),
			{ numRuns: 1000 }
		);
		expect(answered, 'the inputs never fell within the range').toBeGreaterThan(0);
	});
});
