import { range } from 'd3-array';

const UNITS = [
	{ unit: 'd', lengthS: 86_400 },
	{ unit: 'h', lengthS: 3600 },
	{ unit: 'min', lengthS: 60 },
	{ unit: 's', lengthS: 1 }
] as const;

/** Steps at which a clock is read, in seconds. */
const STEPS_S = [
	1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 14_400, 21_600, 43_200,
	86_400, 172_800, 432_000, 864_000, 1_728_000
] as const;

export interface TimeAxis {
	unit: 's' | 'min' | 'h' | 'd';
	ticks: { atS: number; text: string }[];
}

/**
 * Ticks of a time axis from 0 to `untilS`, at steps that a clock has, in one unit.
 *
 * @param most - ticks that fit after the one at 0, at least 1
 */
export function timeAxis(untilS: number, most: number): TimeAxis {
	const stepS =
		STEPS_S.find((step) => untilS / step <= most) ?? 10 ** Math.ceil(Math.log10(untilS));
	const { unit, lengthS } = UNITS.find(({ lengthS: each }) => stepS >= each) ?? UNITS[3];
	return {
		unit,
		ticks: range(0, untilS + stepS / 1e6, stepS).map((atS) => ({
			atS,
			text: String(Math.round((atS / lengthS) * 100) / 100)
		}))
	};
}
