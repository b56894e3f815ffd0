import { linearRegression, quantile, standardDeviation } from 'simple-statistics';
import { activationEnergyKjPerMol } from '../../src/lib/core/laws/cure-rate';
import { combinedFraction } from '../../src/lib/core/laws/order-quantity';
import { ratioUncertaintyFraction } from '../../src/lib/core/laws/weighing-uncertainty';
import { rangeOver } from '../../src/lib/core/quantity/range';
import { outsideCase } from './outside-case';

const STATS = 'npm library simple-statistics 7.12.1';

/** Evenly spread draws from 0 to 1 (Lehmer's generator), the same in every run. */
function draws(count: number, seed: number): number[] {
	let state = seed;
	return Array.from({ length: count }, () => (state = (state * 48_271) % 2_147_483_647)).map(
		(drawn) => drawn / 2_147_483_647
	);
}
const DRAWS = 100_000;
const [first, second] = [draws(DRAWS, 12_345), draws(DRAWS, 67_890)];
for (const [a, b, readabilityG] of [
	[100, 10, 1],
	[500, 50, 0.1],
	[41, 100, 0.5]
] as const) {
	const ratios = first.map(
		(drawn, i) =>
			(a + (drawn - 0.5) * readabilityG) / (b + ((second[i] ?? NaN) - 0.5) * readabilityG)
	);
	outsideCase({
		what: `spread of ${a} : ${b} g read to ${readabilityG} g, over ${DRAWS} drawn weighings`,
		source: STATS,
		unit: '1',
		expected: standardDeviation(ratios) / (a / b),
		got: () => ratioUncertaintyFraction({ massesG: [a, b], readabilityG, tared: false }),
		tolerance: { fraction: 0.01 }
	});
}
const fourth = draws(DRAWS, 424_242);
/** Evenly drawn with a standard deviation of this share around 1. */
const around = (drawn: number, fraction: number): number =>
	1 + (drawn - 0.5) * Math.sqrt(12) * fraction;
const spreadMasses = first.map(
	(drawn, i) => around(drawn, 0.01) * around(second[i] ?? NaN, 0.02) * around(fourth[i] ?? NaN, 0.1)
);
outsideCase({
	what: `spread of density · area · thickness known to 1, 2 and 10 %, over ${DRAWS} draws`,
	source: STATS,
	unit: '1',
	expected: standardDeviation(spreadMasses),
	got: () => combinedFraction([0.01, 0.02, 0.1]),
	tolerance: { fraction: 0.01 }
});
const timesS = [
	[15, 4200],
	[23, 2700],
	[35, 1325]
] as const;
const line = linearRegression(timesS.map(([c, s]) => [1 / (c + 273.15), Math.log(s)]));
outsideCase({
	what: 'activation energy of three times, from its first and last, as a regression line',
	source: STATS,
	unit: 'kJ/mol',
	expected: line.m * 0.008_314_462_618,
	got: () =>
		activationEnergyKjPerMol([
			{ temperatureC: 15, timeS: 4200 },
			{ temperatureC: 35, timeS: 1325 }
		]),
	tolerance: { fraction: 0.02 }
});
// Area, thickness and density drawn evenly inside their ranges: the range must hold what they give.
const given = [
	{ low: 900, high: 1100 },
	{ low: 0.4, high: 0.6 },
	{ low: 1.05, high: 1.15 }
];
const third = draws(DRAWS, 24_680);
const masses = first.map((drawn, i) =>
	[drawn, second[i] ?? NaN, third[i] ?? NaN].reduce(
		(product, share, which) =>
			product *
			((given[which]?.low ?? NaN) +
				share * ((given[which]?.high ?? NaN) - (given[which]?.low ?? NaN))),
		1
	)
);
const range = () => rangeOver(given, (...values) => values.reduce((product, v) => product * v, 1));
outsideCase({
	what: 'least mass of a coat in its range, against the thousandth of drawn masses that is least',
	source: STATS,
	unit: 'g',
	expected: quantile(masses, 0.0001),
	got: () => {
		const found = range();
		return 'low' in found ? found.low : NaN;
	},
	tolerance: { fraction: 0.02 }
});
outsideCase({
	what: 'share of the drawn masses inside the range',
	source: STATS,
	unit: '1',
	expected: 1,
	got: () => {
		const found = range();
		if (!('low' in found)) return NaN;
		return masses.filter((m) => m >= found.low && m <= found.high).length / DRAWS;
	},
	tolerance: 0
});
