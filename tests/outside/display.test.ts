import { displayValue } from '../../src/lib/core/quantity/display';
import type { Unit } from '../../src/lib/core/quantity/unit';
import { outsideCase } from './outside-case';

const SOURCE = 'NIST SP 811 (2008), appendix B.8';

const FACTORS: [value: number, unit: Unit, shown: string, expected: number][] = [
	[25.4, 'mm', 'in', 1],
	[3048, 'mm', 'ft', 10],
	[929.0304, 'cm2', 'ft²', 1],
	[29.57353, 'mL', 'fl oz', 1],
	[3785.412, 'mL', 'gal', 1],
	[453_592.37, 'g', 'lb', 1000],
	[6894.757, 'Pa', 'psi', 1],
	[4.448222, 'N', 'lbf', 1],
	[0.00508, 'm/s', 'ft/min', 1],
	[28.34952, 'g/min', 'oz/min', 1],
	[0.1198264, 'g/mL', 'lb/gal', 1],
	[1.69901, 'm3/h', 'ft³/min', 1],
	[0.001, 'Pa·s', 'cP', 1],
	[37.77778, 'C', '°F', 100]
];

for (const [value, unit, shown, expected] of FACTORS) {
	outsideCase({
		what: `${value} ${unit} in ${shown}`,
		source: SOURCE,
		unit: shown,
		expected,
		got: () => displayValue(value, unit, 'US').value,
		// The factors are printed to seven digits.
		tolerance: { fraction: 5e-7 }
	});
}
