import { roundTo, type HalfRule } from '../../src/lib/core/quantity/rounding';
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

for (const [value, step, rule, expected] of CASES) {
	outsideCase({
		what: `${value} rounded to ${step}, ${rule}`,
		source: 'ISO 80000-1:2009, annex B (from memory)',
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
