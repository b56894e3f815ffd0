import psychrolib from 'psychrolib';
import {
	dewPointC,
	lowestSurfaceC,
	saturationPressurePa,
	surfaceMargin
} from '../../src/lib/core/laws/dew-point';
import { filmDryingS, waterEvaporationGPerM2H } from '../../src/lib/core/laws/drying';
import { absoluteHumidityGPerM3 } from '../../src/lib/core/laws/humidity';
import { outsideCase } from './outside-case';

psychrolib.SetUnitSystem(psychrolib.SI);

const MAGNUS = 'Alduchov and Eskridge 1996, eq. 21, worked separately';
const IAPWS = 'IAPWS formulation through the CoolProp library (second opinion)';
const PSYCHROLIB = 'psychrolib 1.1.1 (ASHRAE Fundamentals 2017, ch. 1)';

const PRESSURES: [temperatureC: number, magnusHpa: number, iapwsHpa: number][] = [
	[0.01, 6.1138, 6.1165],
	[10, 12.2602, 12.282],
	[20, 23.3344, 23.3932],
	[25, 31.6174, 31.6993],
	[30, 42.3665, 42.4697],
	[40, 73.7472, 73.8494],
	[50, 123.6058, 123.5195]
];
for (const [temperatureC, magnusHpa, iapwsHpa] of PRESSURES) {
	outsideCase({
		what: `saturation vapor pressure at ${temperatureC} °C`,
		source: MAGNUS,
		unit: 'hPa',
		expected: magnusHpa,
		got: () => saturationPressurePa(temperatureC) / 100,
		tolerance: 0.0001
	});
	outsideCase({
		what: `saturation vapor pressure at ${temperatureC} °C`,
		source: IAPWS,
		unit: 'hPa',
		expected: iapwsHpa,
		got: () => saturationPressurePa(temperatureC) / 100,
		// The accuracy that Alduchov and Eskridge state.
		tolerance: { fraction: 0.004 }
	});
}
outsideCase({
	what: 'saturation vapor pressure at 5 °C',
	source: 'ASHRAE Fundamentals 2017, ch. 1, table 3',
	unit: 'Pa',
	expected: 872.6,
	got: () => saturationPressurePa(5),
	tolerance: { fraction: 0.004 }
});

const AIRS: [temperatureC: number, humidityPct: number][] = [
	[10, 70],
	[18, 85],
	[20, 50],
	[20, 85],
	[25, 50],
	[25, 65],
	[35, 40]
];
for (const [temperatureC, humidityPct] of AIRS) {
	outsideCase({
		what: `dew point of ${temperatureC} °C, ${humidityPct} %`,
		source: PSYCHROLIB,
		unit: '°C',
		expected: psychrolib.GetTDewPointFromRelHum(temperatureC, humidityPct / 100),
		got: () => dewPointC({ temperatureC, humidityPct }),
		tolerance: 0.02
	});
	outsideCase({
		what: `water in air of ${temperatureC} °C, ${humidityPct} %`,
		source: PSYCHROLIB,
		unit: 'g/m³',
		expected: psychrolibGPerM3(temperatureC, humidityPct),
		got: () => absoluteHumidityGPerM3({ temperatureC, humidityPct }),
		tolerance: { fraction: 0.005 }
	});
}

/** Humidity ratio over the volume of moist air for each kilogram of dry air. */
function psychrolibGPerM3(temperatureC: number, humidityPct: number): number {
	const ratio = psychrolib.GetHumRatioFromRelHum(temperatureC, humidityPct / 100, 101_325);
	return (1000 * ratio) / psychrolib.GetMoistAirVolume(temperatureC, ratio, 101_325);
}

outsideCase({
	what: 'water in saturated air at 20 °C',
	source: 'water vapor at 2336.7 Pa (NIST WebBook Antoine) by the ideal gas law',
	unit: 'g/m³',
	expected: 17.27,
	got: () => absoluteHumidityGPerM3({ temperatureC: 20, humidityPct: 100 }),
	tolerance: { fraction: 0.005 }
});

const ISO_8502 = '3 K rule quoted with ISO 8502-4, dew point by the WMO coefficients';
for (const [temperatureC, humidityPct, lowestC] of [
	[20, 85, 20.4],
	[25, 65, 20.96],
	[20, 50, 12.26]
] as const) {
	outsideCase({
		what: `lowest surface in air of ${temperatureC} °C, ${humidityPct} %`,
		source: ISO_8502,
		unit: '°C',
		expected: lowestC,
		got: () => lowestSurfaceC({ temperatureC, humidityPct }),
		tolerance: 0.02
	});
}
outsideCase({
	what: 'margin of a surface at 15 °C in air of 20 °C, 50 %',
	source: ISO_8502,
	unit: 'K',
	expected: 5.74,
	got: () => surfaceMargin({ temperatureC: 20, humidityPct: 50 }, 15).marginK,
	tolerance: 0.02
});

for (const [temperatureC, airSpeedMPerS, gPerM2H] of [
	[20, 0.1, 165.7],
	[25, 0.1, 225.5],
	[25, 0.5, 298.4]
] as const) {
	outsideCase({
		what: `water lost at ${temperatureC} °C, 50 %, ${airSpeedMPerS} m/s`,
		source:
			'Carrier in ASHRAE Applications, (0.089 + 0.0782 v)(p_w − p_a) / Y, with the WMO vapor pressure',
		unit: 'g/(m²·h)',
		expected: gPerM2H,
		got: () => waterEvaporationGPerM2H({ temperatureC, humidityPct: 50 }, airSpeedMPerS),
		tolerance: { fraction: 0.001 }
	});
}
/** The equation in its own units: ft/min, inHg, Btu/lb, lb/(h·ft²). */
function inchPoundGPerM2H(temperatureC: number, humidity: number, airSpeedMPerS: number): number {
	const saturatedInHg = psychrolib.GetSatVapPres(temperatureC) / 3386.389;
	const latentBtuPerLb = (2501 - 2.361 * temperatureC) / 2.326;
	const speed = 95 + (0.425 * airSpeedMPerS) / 0.00508;
	return ((speed * saturatedInHg * (1 - humidity)) / latentBtuPerLb) * (453.59237 / 0.09290304);
}
for (const [temperatureC, humidityPct, airSpeedMPerS] of [
	[20, 50, 0.1],
	[25, 50, 0.5],
	[30, 40, 1]
] as const) {
	outsideCase({
		what: `water lost at ${temperatureC} °C, ${humidityPct} %, ${airSpeedMPerS} m/s`,
		source: 'Carrier in inch-pound units (ASHRAE Transactions 104(1A), 1998) with psychrolib',
		unit: 'g/(m²·h)',
		expected: inchPoundGPerM2H(temperatureC, humidityPct / 100, airSpeedMPerS),
		got: () => waterEvaporationGPerM2H({ temperatureC, humidityPct }, airSpeedMPerS),
		// The two sets of constants are rounded to two and three digits.
		tolerance: { fraction: 0.01 }
	});
}
outsideCase({
	what: 'shortest drying of 60 µm wet film, 90 % water, 25 °C, 50 %, 0.1 m/s',
	source: 'Carrier in ASHRAE Applications, worked by hand',
	unit: 'min',
	expected: 14.4,
	got: () =>
		(filmDryingS({ wetMm: 0.06, waterFraction: 0.9 }, { temperatureC: 25, humidityPct: 50 })
			?.lowS ?? Number.NaN) / 60,
	tolerance: 0.05
});
