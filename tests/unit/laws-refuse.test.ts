import { describe, expect, test } from 'vitest';
import { airChangesPerH, measuredFlowM3PerH } from '../../src/lib/core/laws/air-changes';
import { beamBending, frameBoardBending } from '../../src/lib/core/laws/beam';
import { concentrationAfter, halfLifeS, timeToPpm } from '../../src/lib/core/laws/buildup';
import { castingMassG, fullMassG, pourVolumeMl } from '../../src/lib/core/laws/casting';
import { stackCentroid, tippingDeg } from '../../src/lib/core/laws/centroid';
import { curvedShell } from '../../src/lib/core/laws/curved-shell';
import { laborPrice, moldCost, partCost } from '../../src/lib/core/laws/cost';
import { dilutionFlow, type Release } from '../../src/lib/core/laws/dilution';
import {
	filmReleaseGPerMin,
	poolReleaseGPerMin,
	saturatedVapor
} from '../../src/lib/core/laws/evaporation';
import { fireDilutionFlow, lelFraction } from '../../src/lib/core/laws/fire-dilution';
import { headPressurePa, wallForce } from '../../src/lib/core/laws/head';
import {
	estimatedHorizontalMm,
	liftingIndex,
	liftingLimit,
	type Lift
} from '../../src/lib/core/laws/lifting';
import { plasterMix } from '../../src/lib/core/laws/plaster';
import { plateBending, type Plate } from '../../src/lib/core/laws/plate';
import { vaporFlowM3PerH } from '../../src/lib/core/laws/ppm';
import {
	processEstimates,
	type ProcessPattern,
	type ProcessTerms
} from '../../src/lib/core/laws/process-estimate';
import { shellThickness } from '../../src/lib/core/laws/shell-thickness';
import { linearShrinkageFraction } from '../../src/lib/core/laws/shrinkage';
import { strapForceN } from '../../src/lib/core/laws/strap';
import { boardUpliftN, coreUplift } from '../../src/lib/core/laws/uplift';
import { mixWaste, partWasteG } from '../../src/lib/core/laws/waste';

interface Entry {
	name: string;
	good: object;
	/** Calls the law with `good`, one of its numbers replaced. */
	call: (input: never) => unknown;
}

function entry<Input extends object>(
	name: string,
	good: Input,
	call: (input: Input) => unknown
): Entry {
	return { name, good, call };
}

const harmless = { sensitizer: false };
const plate: Plate = {
	support: 'clamped',
	load: 'uniform',
	pressurePa: 5000,
	shortMm: 300,
	longMm: 400
};
const lift: Lift = {
	horizontalMm: 400,
	originHeightMm: 800,
	judgedHeightMm: 900,
	travelMm: 300,
	twistDeg: 20,
	liftsPerMin: 0.3,
	duration: 'up to 1 h',
	coupling: 'poor'
};
const release: Release = {
	...harmless,
	releaseGPerMin: 2,
	molarMassGPerMol: 60,
	limitPpm: 200,
	mixingFactor: 4
};
const room = { ...harmless, vaporM3PerH: 0.01, effectiveM3PerH: 200, roomM3: 80, startPpm: 100 };
const pattern: ProcessPattern = {
	lengthMm: 200,
	widthMm: 150,
	heightMm: 100,
	areaCm2: 1000,
	volumeMl: 2500
};
const terms: Omit<ProcessTerms, 'benchTimes'> = {
	gloveMm: 8,
	gloveExtraFraction: 0.3,
	shellMm: 10,
	blockGapMm: 20,
	layerMm: 12,
	layerExtraFraction: 0.15,
	brushRubberGPerMl: 1.1,
	pourRubberGPerMl: 1.1,
	shellGPerMl: 1.6,
	brushRubberPricePerKg: 22,
	pourRubberPricePerKg: 18,
	shellPricePerKg: 8,
	ratePricePerH: 40
};

const LAWS: Entry[] = [
	entry('pourVolumeMl', { cavityMl: 1000, coreMl: 100, lossFraction: 0.1 }, pourVolumeMl),
	entry('castingMassG', { volumeMl: 1000, densityGPerMl: 1.6 }, castingMassG),
	entry('fullMassG', { frame: 2000, glove: 900, shell: 3000 }, fullMassG),
	entry('headPressurePa', { densityGPerMl: 1.6, headMm: 300 }, headPressurePa),
	entry('wallForce', { densityGPerMl: 1.6, headMm: 300, widthMm: 400 }, wallForce),
	entry('boardUpliftN', { densityGPerMl: 1.6, headMm: 300, areaCm2: 400 }, boardUpliftN),
	entry('coreUplift', { volumeMl: 1000, massG: 500, liquidGPerMl: 1.6 }, coreUplift),
	entry(
		'strapForceN',
		{ upliftN: 500, lidMassG: 2000, straps: 2, legAngleDeg: 10, safetyFactor: 2 },
		strapForceN
	),
	entry('laborPrice', { laborS: 3600, ratePricePerH: 40 }, laborPrice),
	entry('moldCost', { laborS: 3600, ratePricePerH: 40, overheadFraction: 0.2 }, (input) =>
		moldCost({ ...input, materialPrices: { rubber: 80 } })
	),
	entry('moldCost, prices', { rubber: 80, shell: 40 }, (materialPrices) =>
		moldCost({ materialPrices, laborS: 3600, ratePricePerH: 40 })
	),
	entry(
		'partCost',
		{
			partsCount: 40,
			moldPrice: 400,
			moldLifePours: 25,
			materialPricePerPour: 8,
			laborSPerPour: 1200,
			ratePricePerH: 40,
			rejectFraction: 0.05
		},
		partCost
	),
	entry(
		'mixWaste',
		{
			mixedG: 3000,
			cupsCount: 8,
			cupResidueG: 10,
			brushesCount: 5,
			brushResidueG: 15,
			trimG: 50
		},
		mixWaste
	),
	entry(
		'partWasteG',
		{ buildWasteG: 300, wornMoldG: 5000, partsPerMold: 25, pourWasteG: 40 },
		partWasteG
	),
	entry('processEstimates, pattern', pattern, (input) => processEstimates(input, terms)),
	entry('processEstimates, terms', terms, (input) => processEstimates(pattern, input)),
	entry('plateBending', { ...plate, thicknessMm: 12, modulusPa: 3e9 }, plateBending),
	entry(
		'shellThickness',
		{ ...plate, modulusPa: 3e9, allowedDeflectionMm: 0.5, allowedStressPa: 5e6 },
		shellThickness
	),
	entry(
		'beamBending',
		{ peakNPerMm: 1, spanMm: 800, widthMm: 100, depthMm: 18, modulusPa: 8e9 },
		(input) => beamBending({ support: 'fixed', load: 'rising', ...input })
	),
	entry(
		'frameBoardBending',
		{
			densityGPerMl: 1.6,
			headMm: 200,
			spanMm: 600,
			boardHeightMm: 250,
			boardMm: 18,
			modulusPa: 8e9
		},
		frameBoardBending
	),
	entry(
		'curvedShell',
		{ pressurePa: 5000, radiusMm: 150, thicknessMm: 6, modulusPa: 3e9 },
		(input) => curvedShell({ form: 'dome', ...input })
	),
	entry('liftingLimit', lift, liftingLimit),
	entry('liftingIndex', { massG: 9000, rwlG: 12_000 }, liftingIndex),
	entry('estimatedHorizontalMm', { moldDepthMm: 400, originHeightMm: 800 }, estimatedHorizontalMm),
	entry('stackCentroid', { massG: 500, xMm: 100, yMm: 100, zMm: 50 }, (part) =>
		stackCentroid([part])
	),
	entry('tippingDeg', { edgeMm: 100, heightMm: 200 }, tippingDeg),
	entry('linearShrinkageFraction', { beforeMm: 254, afterMm: 253 }, linearShrinkageFraction),
	entry('plasterMix', { volumeMl: 4000, waterRatio: 0.7, powderGPerMl: 2.63 }, plasterMix),
	entry('dilutionFlow', release, (input) => dilutionFlow(input, 22)),
	entry(
		'fireDilutionFlow',
		{ releaseGPerMin: 2, molarMassGPerMol: 60, lelPct: 2, temperatureC: 22, safetyFactor: 4 },
		(input) => fireDilutionFlow({ ...harmless, ...input })
	),
	entry(
		'lelFraction',
		{ releaseGPerMin: 2, molarMassGPerMol: 60, lelPct: 2, temperatureC: 22, flowM3PerH: 300 },
		(input) => lelFraction({ ...harmless, ...input })
	),
	entry('concentrationAfter', { ...room, afterS: 600 }, concentrationAfter),
	entry('timeToPpm', { ...room, targetPpm: 60 }, timeToPpm),
	entry('halfLifeS', { effectiveM3PerH: 200, roomM3: 80 }, halfLifeS),
	entry('airChangesPerH', { flowM3PerH: 300, roomM3: 80 }, airChangesPerH),
	entry(
		'measuredFlowM3PerH',
		{ meanMPerS: 3, areaCm2: 400, freeFraction: 0.8 },
		measuredFlowM3PerH
	),
	entry(
		'saturatedVapor',
		{ vaporPressurePa: 4400, molarMassGPerMol: 60, temperatureC: 20 },
		(input) => saturatedVapor({ ...harmless, ...input })
	),
	entry(
		'filmReleaseGPerMin',
		{ appliedG: 50, volatileFraction: 0.9, overS: 900 },
		filmReleaseGPerMin
	),
	entry(
		'poolReleaseGPerMin',
		{
			areaCm2: 300,
			airMPerS: 0.5,
			vaporPressurePa: 4400,
			molarMassGPerMol: 60,
			temperatureC: 20
		},
		poolReleaseGPerMin
	),
	entry(
		'vaporFlowM3PerH',
		{ releaseGPerMin: 2, molarMassGPerMol: 60, temperatureC: 20, pressurePa: 101_325 },
		vaporFlowM3PerH
	)
];

/** Every number in a result, at any depth. */
function numbersIn(value: unknown): number[] {
	if (typeof value === 'number') return [value];
	if (typeof value !== 'object' || value === null) return [];
	return Object.values(value).flatMap(numbersIn);
}

const BAD = [NaN, Infinity, -Infinity, 1e308, -1e308];
const cases = LAWS.flatMap(({ name, good, call }) =>
	Object.entries(good)
		.filter(([, value]) => typeof value === 'number')
		.flatMap(([key]) => BAD.map((bad) => ({ name, key, bad, good, call })))
);

describe('impossible input never becomes a number', () => {
	test.each(LAWS)('$name answers good input with finite numbers', ({ good, call }) => {
		const numbers = numbersIn(call(good as never));
		expect(numbers.length).toBeGreaterThan(0);
		for (const number of numbers) expect(Number.isFinite(number)).toBe(true);
	});

	test.each(cases)('$name refuses $key = $bad', ({ good, key, bad, call }) => {
		expect(() => call({ ...good, [key]: bad } as never)).toThrow(RangeError);
	});

	test('the sentence names the quantity, the value and the range', () => {
		expect(() => headPressurePa({ densityGPerMl: 1, headMm: -3 })).toThrow(
			'headMm is -3; accepted: 0 to 10000'
		);
	});
});
