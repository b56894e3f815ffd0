import psychrolib from 'psychrolib';
import { poolReleaseGPerMin, saturatedVapor } from '../../src/lib/core/laws/evaporation';
import {
	LIST_MOLAR_VOLUME_L,
	mgPerM3FromPpm,
	molarVolumeL,
	ppmFromMgPerM3
} from '../../src/lib/core/laws/ppm';
import { dilutionFlow } from '../../src/lib/core/laws/dilution';
import { strictestLimit } from '../../src/lib/core/laws/strictest-limit';
import { SUBSTANCES, type SubstanceId } from '../../src/lib/core/laws/substances';
import { vaporPressurePa } from '../../src/lib/core/laws/vapor-pressure';
import { outsideCase } from './outside-case';

const molar = (id: SubstanceId) => SUBSTANCES[id].molarMassGPerMol.value;

const VOLUMES: [temperatureC: number, expected: number, source: string][] = [
	[0, 22.414, 'CODATA 2018, molar volume of ideal gas at 0 °C and 1 atm'],
	[20, 24.06, 'Directive 91/322/EEC convention, 20 °C and 101.3 kPa'],
	[25, 24.45, 'OSHA and ACGIH convention, 25 °C and 1 atm']
];
for (const [temperatureC, expected, source] of VOLUMES) {
	outsideCase({
		what: `molar volume at ${temperatureC} °C`,
		source,
		unit: 'L/mol',
		expected,
		got: () => molarVolumeL(temperatureC),
		// 24.45 is itself a convention, 0.06 % below the ideal gas.
		tolerance: { fraction: 0.0007 }
	});
}

// The lists round their own mg/m³ columns, by up to a percent.
const LIST_ROUNDING = { fraction: 0.01 };
const NIOSH = 'NIOSH recommended exposure limits, both columns';
const UK = 'EH40/2005, both columns (from memory)';
const PAIRS: [SubstanceId, ppm: number, expected: number, list: 'US' | 'UK', source: string][] = [
	['acetone', 250, 590, 'US', NIOSH],
	['styrene', 50, 215, 'US', NIOSH],
	['isopropanol', 400, 980, 'US', NIOSH],
	['ethanol', 1000, 1900, 'US', NIOSH],
	['methanol', 200, 260, 'US', NIOSH],
	['heptane', 85, 350, 'US', NIOSH],
	['toluene', 100, 375, 'US', NIOSH],
	['xylene', 100, 435, 'US', NIOSH],
	['mdi', 0.005, 0.051, 'US', 'ACGIH TLV, both columns'],
	['acetone', 500, 1210, 'UK', UK],
	['isopropanol', 400, 999, 'UK', UK],
	['ethanol', 1000, 1920, 'UK', UK],
	['toluene', 50, 191, 'UK', 'EH40/2005, both columns'],
	['styrene', 100, 430, 'UK', UK],
	['heptane', 500, 2085, 'UK', UK],
	['methanol', 200, 266, 'UK', UK]
];
for (const [id, ppm, expected, list, source] of PAIRS) {
	outsideCase({
		what: `${ppm} ppm of ${id}`,
		source,
		unit: 'mg/m3',
		expected,
		got: () =>
			mgPerM3FromPpm(ppm, {
				molarMassGPerMol: molar(id),
				molarVolumeL: LIST_MOLAR_VOLUME_L[list]
			}),
		tolerance: LIST_ROUNDING
	});
}
outsideCase({
	what: 'MDI, 0.05 mg/m³',
	source: NIOSH,
	unit: 'ppm',
	expected: 0.005,
	got: () => ppmFromMgPerM3(0.05, { molarMassGPerMol: molar('mdi') }),
	// One figure printed.
	tolerance: 0.0005
});

const pressure = (id: SubstanceId, temperatureC = 20) =>
	vaporPressurePa(id, temperatureC)?.pressurePa ?? NaN;
const COOLPROP: [SubstanceId, expected: number][] = [
	['acetone', 24_662],
	['ethanol', 5876],
	['methanol', 13_032],
	['toluene', 2919]
];
for (const [id, expected] of COOLPROP) {
	outsideCase({
		what: `vapor pressure of ${id} at 20 °C`,
		source: 'CoolProp 8.0.0, reference equations of state',
		unit: 'Pa',
		expected,
		got: () => pressure(id),
		tolerance: { fraction: 0.01 }
	});
}
const WAGNER: [SubstanceId, expected: number, fraction: number][] = [
	['heptane', 4724, 0.01],
	// Sources differ by these shares.
	['isopropanol', 4217, 0.05],
	['styrene', 604, 0.075]
];
for (const [id, expected, fraction] of WAGNER) {
	outsideCase({
		what: `vapor pressure of ${id} at 20 °C`,
		source: 'Wagner equations in the Python libraries chemicals and thermo',
		unit: 'Pa',
		expected,
		got: () => pressure(id),
		tolerance: { fraction }
	});
}
// ln(P / kPa) = A − B / (t + C), t in °C.
const TABLE_B2: [SubstanceId, a: number, b: number, c: number, source: string][] = [
	['acetone', 14.3145, 2756.22, 228.06, 'Table B.2'],
	['ethanol', 16.8958, 3795.17, 230.918, 'Table B.2'],
	['methanol', 16.5785, 3638.27, 239.5, 'Table B.2'],
	['toluene', 13.932, 3056.96, 217.625, 'Table B.2']
];
for (const [id, a, b, c, source] of TABLE_B2) {
	outsideCase({
		what: `vapor pressure of ${id} at 30 °C`,
		source: `Smith, Van Ness, Abbott & Swihart, Chemical Engineering Thermodynamics, ${source}`,
		unit: 'Pa',
		expected: 1000 * Math.exp(a - b / (30 + c)),
		got: () => pressure(id, 30),
		tolerance: { fraction: 0.01 }
	});
}

psychrolib.SetUnitSystem(psychrolib.SI);
outsideCase({
	what: 'saturated water vapor at 20 °C from a vapor pressure by psychrolib',
	source: 'published table of water in saturated air, 17.3 mg/L at 20 °C',
	unit: 'mg/m3',
	expected: 17_300,
	got: () =>
		saturatedVapor({
			sensitizer: false,
			vaporPressurePa: psychrolib.GetSatVapPres(20),
			molarMassGPerMol: 18.015,
			temperatureC: 20
		}).mgPerM3,
	tolerance: 50
});
outsideCase({
	what: 'saturated acetone at 20 °C, 180 mmHg',
	source:
		'National Toxicology Program, Chemical Repository (1991): 180 mmHg at 20 °C, over 760 mmHg',
	unit: 'ppm',
	expected: (1e6 * 180) / 760,
	got: () =>
		saturatedVapor({
			sensitizer: false,
			vaporPressurePa: SUBSTANCES.acetone.vaporPressurePa?.value ?? NaN,
			molarMassGPerMol: molar('acetone'),
			temperatureC: 20
		}).ppm,
	tolerance: { fraction: 1e-5 }
});
outsideCase({
	what: 'acrylonitrile, release of a square foot over that at 1 m/s: liquid factor LFA',
	source: 'US EPA 550-B-99-009, exhibit B-2 (from memory)',
	unit: 'lb/min',
	expected: 0.018,
	got: () =>
		poolReleaseGPerMin({
			areaCm2: 929.0304,
			airMPerS: 1,
			vaporPressurePa: 108 * 133.322387,
			molarMassGPerMol: 53.06,
			temperatureC: 24.85
		}) / 453.59237,
	tolerance: 0.0005
});

const harmless = { sensitizer: false };
const FLOWS: [SubstanceId, gPerH: number, limitPpm: number, k: number, expected: number][] = [
	['acetone', 100, 500, 3, 252.7],
	['isopropanol', 200, 200, 5, 2035],
	['styrene', 30, 20, 4, 1409]
];
for (const [id, gPerH, limit, mixingFactor, expected] of FLOWS) {
	outsideCase({
		what: `${gPerH} g/h of ${id} to ${limit} ppm, K = ${mixingFactor}`,
		source: 'ideal gas at 25 °C, worked by hand',
		unit: 'm3/h',
		expected,
		got: () =>
			dilutionFlow(
				{
					...harmless,
					releaseGPerMin: gPerH / 60,
					molarMassGPerMol: molar(id),
					limitPpm: limit,
					mixingFactor
				},
				25
			).flowM3PerH,
		tolerance: { fraction: 0.001 }
	});
}

const ALL = ['OSHA PEL', 'NIOSH REL', 'ACGIH TLV', 'UK WEL'] as const;
const STRICT: [SubstanceId, expected: number, source: string][] = [
	['acetone', 250, 'NIOSH REL'],
	['styrene', 10, 'ACGIH TLV 2020 (from memory)'],
	['isopropanol', 200, 'ACGIH TLV (from memory)'],
	['heptane', 85, 'NIOSH REL']
];
for (const [substance, expected, source] of STRICT) {
	outsideCase({
		what: `strictest shift average of four lists for ${substance}`,
		source,
		unit: 'ppm',
		expected,
		got: () => strictestLimit({ substance, sets: ALL, kind: 'average' })?.limitPpm ?? NaN,
		tolerance: 1e-9
	});
}
