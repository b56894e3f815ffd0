import {
	roundDownTo,
	roundTo,
	roundUpTo,
	type HalfRule
} from '../../src/lib/core/quantity/rounding';
import { outsideCase } from './outside-case';

const AWAY: HalfRule = 'half away from zero';
const EVEN: HalfRule = 'half to even';

const CASES: [value: number, step: number, rule: HalfRule, expected: number][] = [
	[12.223, 0.1, EVEN, 12.2],
	[12.251, 0.1, EVEN, 12.3],
	[12.275, 0.1, EVEN, 12.3],
	[1222.3, 10, EVEN, 1220],
	[1225.1, 10, EVEN, 1230],
	[1227.5, 10, EVEN, 1230],
	[12.25, 0.1, EVEN, 12.2],
	[12.35, 0.1, EVEN, 12.4],
	[1225, 10, EVEN, 1220],
	[1235, 10, EVEN, 1240],
	[12.25, 0.1, AWAY, 12.3],
	[12.35, 0.1, AWAY, 12.4],
	[-12.25, 0.1, AWAY, -12.3],
	[1225, 10, AWAY, 1230],
	[1235, 10, AWAY, 1240]
];

/** The examples that ISO 80000-1:2009 is remembered to give for its rules A and B, rounded by another hand. */
const DECIMAL =
	'Python library decimal, ROUND_HALF_EVEN and ROUND_HALF_UP (rules A and B of ISO 80000-1)';
for (const [value, step, rule, expected] of CASES) {
	outsideCase({
		what: `${value} rounded to ${step}, ${rule}`,
		source: DECIMAL,
		unit: '1',
		expected,
		got: () => roundTo(value, step, rule),
		tolerance: 0
	});
}

outsideCase({
	what: '10.05762 ohm rounded to the place of its uncertainty',
	source: 'JCGM 100:2008 (GUM), 7.2.6',
	unit: 'Ω',
	expected: 10.058,
	got: () => roundTo(10.05762, 0.001),
	tolerance: 0
});

const IS_2 = 'IS 2:1960, rules for rounding off numerical values, rules I and II, worked examples';
for (const [value, step, expected] of [
	[4.36, 1, 4],
	[2.355, 1, 2],
	[15.205, 0.1, 15.2],
	[9.625, 1, 10],
	[2.651, 0.1, 2.7],
	[0.3552, 0.01, 0.36],
	[12.545001, 0.01, 12.55]
] as const) {
	outsideCase({
		what: `${value} rounded to ${step}`,
		source: IS_2,
		unit: '1',
		expected,
		got: () => roundTo(value, step, EVEN),
		tolerance: 0
	});
}
const IS_2_LIMITS = 'IS 2:1960, amendment 1 (1997), rounding against a limit';
for (const [what, got, expected, unit] of [
	['leakage of 210.1 µA against a maximum', () => roundUpTo(210.1, 1), 211, 'µA'],
	['cyanide of 0.051 mg/L against a maximum', () => roundUpTo(0.051, 0.01), 0.06, 'mg/L'],
	['wall of 2.39 mm against a minimum', () => roundDownTo(2.39, 0.1), 2.3, 'mm']
] as const) {
	outsideCase({ what, source: IS_2_LIMITS, unit, expected, got, tolerance: 0 });
}
