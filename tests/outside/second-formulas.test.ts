import quantity from 'js-quantities';
import { largestCupG } from '../../src/lib/core/laws/cups';
import { curvedShell } from '../../src/lib/core/laws/curved-shell';
import { dilutionFlow } from '../../src/lib/core/laws/dilution';
import { fireDilutionFlow } from '../../src/lib/core/laws/fire-dilution';
import { largestHoldingMm } from '../../src/lib/core/laws/sag';
import { strapForceN } from '../../src/lib/core/laws/strap';
import { coatReachMm } from '../../src/lib/core/mesh/reach';
import { outsideCase } from './outside-case';

const UNITS = 'npm library js-quantities 1.8.0, the formula worked with its units';
/** The library's figures are rounded to six to eight digits. */
const SIX_DIGITS = { fraction: 5e-6 };

for (const [pa, density] of [
	['60 Pa', '1.12 g/cm^3'],
	['150 Pa', '70 lb/ft^3'],
	['0.02 psi', '1.6 g/cm^3']
] as const) {
	const [held, gPerMl] = [quantity(pa), quantity(density)];
	outsideCase({
		what: `thickest upright coat of ${density} that ${pa} hold: stress over weight`,
		source: UNITS,
		unit: 'mm',
		expected: held.div(gPerMl).div(quantity('9.80665 m/s^2')).to('mm').scalar,
		got: () =>
			largestHoldingMm({
				yieldStressPa: held.to('Pa').scalar,
				densityGPerMl: gPerMl.to('g/cm^3').scalar,
				slopeDeg: 90
			}),
		tolerance: SIX_DIGITS
	});
}

for (const [pa, density, coat] of [
	['60 Pa', '1.12 g/cm^3', '1/2 in'],
	['40 Pa', '70 lb/ft^3', '1/8 in']
] as const) {
	const slumps = quantity(pa).div(quantity(density)).div(quantity('9.80665 m/s^2'));
	const wetMm = coat === '1/2 in' ? 12.7 : 3.175;
	outsideCase({
		what: `half the slot that ${pa} at both walls bridge against ${density}, no more than the coat of ${coat}`,
		source: UNITS,
		unit: 'mm',
		expected: Math.min(slumps.to('mm').scalar, wetMm),
		got: () =>
			coatReachMm({
				wetMm,
				yieldPa: quantity(pa).to('Pa').scalar,
				densityGPerMl: quantity(density).to('g/cm^3').scalar
			}),
		tolerance: SIX_DIGITS
	});
}

const hoop = quantity('0.8 psi').mul(quantity('7 in')).div(quantity('0.25 in'));
outsideCase({
	what: 'hoop stress of a round shell 14 in across and 1/4 in thick under 0.8 psi: p r / t',
	source: UNITS,
	unit: 'Pa',
	expected: hoop.to('Pa').scalar,
	got: () =>
		curvedShell({
			form: 'cylinder',
			pressurePa: quantity('0.8 psi').to('Pa').scalar,
			radiusMm: quantity('7 in').to('mm').scalar,
			thicknessMm: quantity('0.25 in').to('mm').scalar,
			modulusPa: 3e9
		}).stressPa,
	tolerance: SIX_DIGITS
});
const lid = quantity('180 lbf').sub(quantity('22 lb').mul(quantity('9.80665 m/s^2')).to('lbf'));
outsideCase({
	what: 'pull in each of three straps that hold 180 lbf under a lid of 22 lb, no margin',
	source: UNITS,
	unit: 'N',
	expected: lid.to('N').scalar / 6,
	got: () =>
		strapForceN({
			upliftN: quantity('180 lbf').to('N').scalar,
			lidMassG: quantity('22 lb').to('g').scalar,
			straps: 3,
			safetyFactor: 1
		}),
	tolerance: SIX_DIGITS
});

/** Ideal gas: what a released mass fills at 25 °C and one atmosphere, an hour. */
const vapor = (grams: string, molar: string) =>
	quantity(`${grams}/h`)
		.div(quantity(molar))
		.mul(quantity('8.314462618 J/mol*degK'))
		.mul(quantity('298.15 degK'))
		.div(quantity('101325 Pa'))
		.to('m^3/h').scalar;
outsideCase({
	what: 'air for 4 oz of acetone an hour to 250 ppm, mixing factor 3',
	source: UNITS,
	unit: 'm3/h',
	expected: (3 * vapor('4 oz', '58.08 g/mol')) / 250e-6,
	got: () =>
		dilutionFlow(
			{
				sensitizer: false,
				releaseGPerMin: quantity('4 oz').to('g').scalar / 60,
				molarMassGPerMol: 58.08,
				limitPpm: 250,
				mixingFactor: 3
			},
			25
		).flowM3PerH,
	tolerance: SIX_DIGITS
});
outsideCase({
	what: 'air for a pound of toluene an hour, a quarter of its explosive limit of 1.1 %',
	source: UNITS,
	unit: 'm3/h',
	expected: vapor('1 lb', '92.14 g/mol') / (0.25 * 0.011),
	got: () =>
		fireDilutionFlow({
			sensitizer: false,
			releaseGPerMin: quantity('1 lb').to('g').scalar / 60,
			molarMassGPerMol: 92.14,
			lelPct: 1.1,
			temperatureC: 25
		}).flowM3PerH,
	tolerance: SIX_DIGITS
});
outsideCase({
	what: 'largest cup at 1.5 oz a minute in 9 min of working time less 90 s of mixing',
	source: UNITS,
	unit: 'g',
	expected: quantity('1.5 oz/min')
		.mul(quantity('9 min').sub(quantity('90 s')))
		.to('g').scalar,
	got: () =>
		largestCupG({
			workingTimeS: 540,
			mixingTimeS: 90,
			layingRateGPerMin: quantity('1.5 oz').to('g').scalar
		}) ?? NaN,
	tolerance: SIX_DIGITS
});
