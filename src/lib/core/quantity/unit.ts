/**
 * The core's units, one per kind of quantity. US customary units exist only at the edge
 * (see `display.ts`); nothing in the core converts.
 */
export const UNITS = [
	'mm',
	'cm2',
	'mL',
	'g',
	's',
	'C',
	'K',
	'g/mL',
	'Pa·s',
	'Pa',
	'N',
	'%',
	'fraction',
	'count',
	'currency',
	'currency/h',
	'deg',
	'g/m3',
	'ppm',
	'mg/m3',
	'm3',
	'm3/h',
	'1/h',
	'1/min',
	'm/s',
	'g/min',
	'cm2/min',
	'W',
	'kJ/mol',
	'J/g',
	'J/(g·K)',
	'g/(m2·h)',
	'N/mm',
	'N·mm',
	'mm/s',
	'text'
] as const;

export type Unit = (typeof UNITS)[number];
