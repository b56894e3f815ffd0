import type { Bounds } from './measures';

export interface UnitGuess {
	unit: 'mm' | 'cm' | 'm' | 'in';
	/** Millimeters in the unit. */
	unitMm: number;
	/** Longest side of the box when the unit is so, millimeters. */
	longestMm: number;
	/** Whether this unit alone gives a size a bench can hold. */
	isOnlyOne: boolean;
}

const UNITS = [
	{ unit: 'mm', unitMm: 1 },
	{ unit: 'in', unitMm: 25.4 },
	{ unit: 'cm', unitMm: 10 },
	{ unit: 'm', unitMm: 1000 }
] as const;
/** Longest sides that patterns for glove molds have: 20 mm to 3 m; common practice, no source. */
const LEAST_MM = 20;
const MOST_MM = 3000;

/** The unit a file without one was most likely drawn in, judged by its size; a person confirms it. */
export function guessUnit({ min, max }: Bounds): UnitGuess {
	const longest = Math.max(max[0] - min[0], max[1] - min[1], max[2] - min[2]);
	const fitting = UNITS.filter(
		({ unitMm }) => longest * unitMm >= LEAST_MM && longest * unitMm <= MOST_MM
	);
	const { unit, unitMm } = fitting[0] ?? (longest > MOST_MM ? UNITS[0] : UNITS[3]);
	return { unit, unitMm, longestMm: longest * unitMm, isOnlyOne: fitting.length === 1 };
}
