import { describe, expect, test } from 'vitest';
import { measuredFlowM3PerH } from '../../src/lib/core/laws/air-changes';
import { frameBoardBending } from '../../src/lib/core/laws/beam';
import { fullMassG, pourVolumeMl } from '../../src/lib/core/laws/casting';
import { curvedShell } from '../../src/lib/core/laws/curved-shell';
import { filmReleaseGPerMin, poolReleaseGPerMin } from '../../src/lib/core/laws/evaporation';
import { estimatedHorizontalMm } from '../../src/lib/core/laws/lifting';
import { waterRatioFromConsistency } from '../../src/lib/core/laws/plaster';
import { chooseProcess } from '../../src/lib/core/laws/process-choice';
import { shiftAverage } from '../../src/lib/core/laws/shift-average';
import { partWasteG } from '../../src/lib/core/laws/waste';

describe('sums worked by hand', () => {
	test('a 2 L cavity with a 0.2 L core and 10% loss needs 2 L', () => {
		expect(pourVolumeMl({ cavityMl: 2000, coreMl: 200, lossFraction: 0.1 })).toBeCloseTo(2000, 9);
		expect(() => pourVolumeMl({ cavityMl: 200, coreMl: 200, lossFraction: 0 })).toThrow(/coreMl/);
	});

	test('a filled mold weighs what its parts weigh, and an odd part is named', () => {
		expect(fullMassG({ frame: 2100, glove: 900, shell: 3000, casting: 4000 })).toBe(10_000);
		expect(() => fullMassG({ frame: 1, glove: -2 })).toThrow('mass of glove (g) is -2');
	});

	test('a board 250 × 18 mm over 600 mm bulges 0.34 mm under 200 mm of water', () => {
		const board = frameBoardBending({
			densityGPerMl: 1,
			headMm: 200,
			spanMm: 600,
			boardHeightMm: 250,
			boardMm: 18,
			modulusPa: 8e9
		});
		expect(board.deflectionMm).toBeCloseTo(0.3405, 3);
	});

	test('a dome grows 0.35 times as much as a cylinder', () => {
		const shell = { pressurePa: 5000, radiusMm: 150, thicknessMm: 6, modulusPa: 3e9 };
		const cylinder = curvedShell({ ...shell, form: 'cylinder' });
		expect(cylinder.growthMm).toBeCloseTo(0.00625, 9);
		expect(curvedShell({ ...shell, form: 'dome' }).growthMm).toBeCloseTo(0.0021875, 9);
		expect(() => curvedShell({ ...shell, form: 'dome', thicknessMm: 20 })).toThrow(/to 15/);
	});

	test('3 m/s through 400 cm² with a fifth behind mesh is 345.6 m³/h', () => {
		expect(measuredFlowM3PerH({ meanMPerS: 3, areaCm2: 400, freeFraction: 0.8 })).toBeCloseTo(
			345.6,
			9
		);
	});

	test('50 g of a film, nine tenths volatile, dry in 15 min, give 3 g/min', () => {
		expect(filmReleaseGPerMin({ appliedG: 50, volatileFraction: 0.9, overS: 900 })).toBeCloseTo(
			3,
			9
		);
	});

	test('twice the surface releases twice the vapor', () => {
		const cup = { airMPerS: 0.5, vaporPressurePa: 24_000, molarMassGPerMol: 58, temperatureC: 20 };
		const one = poolReleaseGPerMin({ ...cup, areaCm2: 100 });
		expect(poolReleaseGPerMin({ ...cup, areaCm2: 200 })).toBeCloseTo(2 * one, 9);
		expect(() => poolReleaseGPerMin({ ...cup, areaCm2: 100, airMPerS: 0.1 })).toThrow(/0.5 to 5/);
	});

	test('hands below 25 cm are 5 cm farther away', () => {
		expect(estimatedHorizontalMm({ moldDepthMm: 300, originHeightMm: 249 })).toBe(400);
		expect(estimatedHorizontalMm({ moldDepthMm: 300, originHeightMm: 250 })).toBe(350);
	});

	test('a consistency of 67 is 0.67 water to plaster', () => {
		expect(waterRatioFromConsistency(67)).toBeCloseTo(0.67, 12);
	});

	test('a day and a half of exposure is not a shift', () => {
		expect(() =>
			shiftAverage([
				{ concentration: 5, timeS: 80_000 },
				{ concentration: 5, timeS: 20_000 }
			])
		).toThrow(/time of all periods/);
		expect(shiftAverage([])).toBe(0);
	});

	test('300 g of build waste and a 5 kg mold over 25 parts, 40 g a pour: 252 g a part', () => {
		expect(
			partWasteG({ buildWasteG: 300, wornMoldG: 5000, partsPerMold: 25, pourWasteG: 40 })
		).toBe(252);
	});

	test('two ways within five percent: the quicker one, though it is dearer', () => {
		const bench = { fixedS: 3600, perM2S: 0 };
		const choice = chooseProcess({
			pattern: { lengthMm: 100, widthMm: 100, heightMm: 100, areaCm2: 500, volumeMl: 1000 },
			terms: {
				gloveMm: 8,
				gloveExtraFraction: 0,
				shellMm: 10,
				blockGapMm: 20,
				layerMm: 12,
				layerExtraFraction: 0,
				brushRubberGPerMl: 1,
				pourRubberGPerMl: 1,
				shellGPerMl: 1,
				brushRubberPricePerKg: 0,
				pourRubberPricePerKg: 0,
				shellPricePerKg: 0,
				ratePricePerH: 100,
				benchTimes: {
					glove: { ...bench, daysCount: 3 },
					'solid block': { fixedS: 3700, perM2S: 0, daysCount: 2 },
					'poured layer': { ...bench, daysCount: 4 }
				}
			}
		});
		expect(choice.chosen).toBe('solid block');
		expect(choice.reason).toContain('costs 3% less');
	});
});
