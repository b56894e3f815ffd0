import { displayQuantity } from '../quantity/display';
import type { Unit } from '../quantity/unit';
import type { Shop } from './shop';

/** Endings of the laws' names for their inputs, and the unit each stands for; longer ones first. */
const ENDINGS: ReadonlyArray<readonly [string, Unit]> = [
	['M3PerH', 'm3/h'],
	['GPerMl', 'g/mL'],
	['GPerMin', 'g/min'],
	['Fraction', 'fraction'],
	['PaS', 'Pa·s'],
	['Cm2', 'cm2'],
	['Ppm', 'ppm'],
	['Pct', '%'],
	['Deg', 'deg'],
	['Mm', 'mm'],
	['Ml', 'mL'],
	['M3', 'm3'],
	['Pa', 'Pa'],
	['C', 'C'],
	['G', 'g'],
	['K', 'K'],
	['N', 'N'],
	['S', 's']
];

const NUMBER = String.raw`-?[\d.]+(?:e[+-]?\d+)?`;
const LIMIT = new RegExp(
	String.raw`^([a-z][A-Za-z0-9]*) is (${NUMBER}); accepted: (${NUMBER}) to (${NUMBER})$`
);

/**
 * What a law says of an input outside its limits, in words and in the shop's units: "thickness is 4.24 in; accepted:
 * 0.00197 in to 3.94 in". A sentence of another form stays as it is.
 */
export function limitWords(message: string, units: Shop['units']): string {
	const [, name = '', ...numbers] = LIMIT.exec(message) ?? [];
	const [ending, unit] = ENDINGS.find(([end]) => name.endsWith(end)) ?? [];
	if (!ending || !unit) return message;
	const words = name
		.slice(0, -ending.length)
		.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
	const [value, least, most] = numbers.map((number) =>
		displayQuantity(Number(number), unit, units)
	);
	return `${words} is ${value}; accepted: ${least} to ${most}`;
}
