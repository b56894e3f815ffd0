import { conversionRatePerS, timeToConversionS } from '../../src/lib/core/laws/autocatalytic-cure';
import { equivalentTimeS, reachedAfterS } from '../../src/lib/core/laws/cure-profile';
import {
	activationEnergyKjPerMol,
	GAS_CONSTANT_KJ,
	speedFactor,
	timeAtTemperatureS,
	type CureRate
} from '../../src/lib/core/laws/cure-rate';
import { outsideCase } from './outside-case';

const ARRHENIUS = 'Arrhenius 1889, factors worked separately';
const Q10 = 'textbook Q10 rule, factors worked separately';
const C1074 = 'ASTM C1074, equivalent age with Q = 5,000 K at 20 °C, factors worked by hand';

const arrhenius = (kj: number): CureRate => ({ kind: 'arrhenius', activationEnergyKjPerMol: kj });
const q10 = (factor: number): CureRate => ({ kind: 'q10', factor });

const FACTORS: [kj: number, temperatureC: number, factor: number][] = [
	[40, 10, 0.4743],
	[40, 40, 2.4154],
	[50, 15, 0.5691],
	[50, 30, 1.5982],
	[60, 18, 0.6581],
	[60, 35, 2.5829],
	[80, 10, 0.225],
	[80, 25, 1.2435],
	[80, 40, 5.8344]
];
for (const [kj, temperatureC, expected] of FACTORS) {
	outsideCase({
		what: `speed at ${temperatureC} °C against 23 °C, ${kj} kJ/mol`,
		source: ARRHENIUS,
		unit: '1',
		expected,
		got: () => speedFactor({ temperatureC, referenceC: 23, rate: arrhenius(kj) }),
		tolerance: 0.00006
	});
}
const Q10_FACTORS: [factor: number, temperatureC: number, expected: number][] = [
	[2, 13, 0.5],
	[2, 18, 0.7071],
	[2, 30, 1.6245],
	[3, 13, 0.3333],
	[3, 25, 1.2457],
	[3, 33, 3]
];
for (const [factor, temperatureC, expected] of Q10_FACTORS) {
	outsideCase({
		what: `speed at ${temperatureC} °C against 23 °C, Q10 ${factor}`,
		source: Q10,
		unit: '1',
		expected,
		got: () => speedFactor({ temperatureC, referenceC: 23, rate: q10(factor) }),
		tolerance: 0.00006
	});
}
for (const [temperatureC, minutes] of [
	[30, 18.47],
	[18, 42.43]
] as const) {
	outsideCase({
		what: `pot life of 30 min at 23 °C, at ${temperatureC} °C with Q10 2`,
		source: Q10,
		unit: 'min',
		expected: minutes,
		got: () => timeAtTemperatureS({ timeS: 1800, temperatureC: 23 }, temperatureC, q10(2)) / 60,
		tolerance: 0.006
	});
}
for (const [timeS, expected] of [
	[600, 5],
	[3600, 30]
] as const) {
	outsideCase({
		what: `${timeS / 60} min at 25 °C, at 35 °C`,
		source: 'adhesive-trade rule: 10 K halve gel and cure time',
		unit: 'min',
		expected,
		got: () => timeAtTemperatureS({ timeS, temperatureC: 25 }, 35, q10(2)) / 60,
		tolerance: 1e-9
	});
}
for (const [factor, kj] of [
	[2, 51.22],
	[2.5, 67.7],
	[3, 81.18]
] as const) {
	outsideCase({
		what: `activation energy of a ratio of ${factor} between 20 and 30 °C`,
		source: ARRHENIUS,
		unit: 'kJ/mol',
		expected: kj,
		got: () =>
			activationEnergyKjPerMol([
				{ timeS: 3600 * factor, temperatureC: 20 },
				{ timeS: 3600, temperatureC: 30 }
			]),
		tolerance: 0.006
	});
}

const concrete = arrhenius(5000 * GAS_CONSTANT_KJ);
for (const [temperatureC, expected] of [
	[5, 0.3986],
	[10, 0.5475],
	[15, 0.7438],
	[25, 1.3311],
	[30, 1.7553],
	[35, 2.2939],
	[40, 2.9723]
] as const) {
	outsideCase({
		what: `equivalent hours at 20 °C of one hour at ${temperatureC} °C`,
		source: C1074,
		unit: 'h',
		expected,
		got: () =>
			equivalentTimeS([{ atS: 0, temperatureC }], 3600, { referenceC: 20, rate: concrete }) / 3600,
		tolerance: 0.00006
	});
}
outsideCase({
	what: 'ten hours falling from 30 to 10 °C, Q10 2, against 20 °C',
	source: 'closed integral of 2^(T/10) over a straight line',
	unit: 'h',
	// ∫ 2^((10 − 2t)/10) dt over 10 h = (2 − 1/2) · 5 / ln 2
	expected: (1.5 * 5) / Math.LN2,
	got: () =>
		equivalentTimeS(
			[
				{ atS: 0, temperatureC: 30 },
				{ atS: 36_000, temperatureC: 10 }
			],
			36_000,
			{ referenceC: 20, rate: q10(2) }
		) / 3600,
	tolerance: { fraction: 1e-7 }
});
outsideCase({
	what: 'end of an 8 h cure (23 °C) after 4 h at 23 °C, then a night at 13 °C, Q10 2',
	source: 'worked by hand: 4 h left, at half speed',
	unit: 'h',
	expected: 12,
	got: () =>
		(reachedAfterS(
			[
				{ atS: 14_400, temperatureC: 23 },
				{ atS: 14_400, temperatureC: 13 }
			],
			28_800,
			{ referenceC: 23, rate: q10(2) }
		) ?? Number.NaN) / 3600,
	tolerance: 1e-4
});

outsideCase({
	what: 'conversion where the autocatalytic speed peaks, (1 − α0)/2',
	source: 'derivative of (α + α0)(1 − α), by hand',
	unit: '1',
	expected: 0.475,
	got: () => {
		const speed = (i: number) => conversionRatePerS(i / 10_000, 0.002);
		let fastest = 0;
		for (let i = 1; i <= 10_000; i += 1) if (speed(i) > speed(fastest)) fastest = i;
		return fastest / 10_000;
	},
	tolerance: 1e-4
});
outsideCase({
	what: 'time to half conversion with k = 0.001/s, α0 = 0.05',
	source: 'integral of dα/((α + α0)(1 − α)) by partial fractions, by hand',
	unit: 's',
	expected: Math.log(0.55 / (0.05 * 0.5)) / (0.001 * 1.05),
	got: () => timeToConversionS({ conversion: 0.5, kPerS: 0.001 }),
	tolerance: 1e-6
});
