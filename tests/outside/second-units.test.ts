import quantity from 'js-quantities';
import { displayValue } from '../../src/lib/core/quantity/display';
import type { Unit } from '../../src/lib/core/quantity/unit';
import { outsideCase } from './outside-case';

const UNITS = 'npm library js-quantities 1.8.0';

const CONVERTED: [value: number, unit: Unit, theirs: string, to: string][] = [
	[31.75, 'mm', 'mm', 'in'],
	[2743, 'mm', 'mm', 'ft'],
	[1234, 'cm2', 'cm2', 'ft2'],
	[355, 'mL', 'ml', 'floz'],
	[5000, 'mL', 'ml', 'gal'],
	[12_345, 'g', 'g', 'lb'],
	[1.13, 'g/mL', 'g/ml', 'lb/gal'],
	[20.7, 'Pa·s', 'Pa*s', 'cP'],
	[101_325, 'Pa', 'Pa', 'psi'],
	[77, 'N', 'N', 'lbf'],
	[9.4, 'g/m3', 'g/m3', 'grains/ft3'],
	[60, 'm3', 'm3', 'ft3'],
	[340, 'm3/h', 'm3/h', 'ft3/min'],
	[3.2, 'N/mm', 'N/mm', 'lbf/in'],
	[12, 'mm/s', 'mm/s', 'in/s'],
	[0.3, 'm/s', 'm/s', 'ft/min'],
	[45, 'g/min', 'g/min', 'oz/min'],
	[350, 'cm2/min', 'cm2/min', 'in2/min'],
	[23, 'C', 'tempC', 'tempF']
];
for (const [value, unit, theirs, to] of CONVERTED) {
	outsideCase({
		what: `${value} ${unit} in ${to}`,
		source: UNITS,
		unit: to,
		expected: quantity(`${value} ${theirs}`).to(to).scalar,
		got: () => displayValue(value, unit, 'US').value,
		// The library's gallon, pound-force and psi are rounded to six to eight digits.
		tolerance: { fraction: 5e-7 }
	});
}
