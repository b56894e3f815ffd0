import { assertWithin } from '../quantity/assert-within';
import type { Law } from '../quantity/figure';

export const liftingFrequencyLaw: Law = {
	id: 'lifting-frequency',
	name: 'Frequency multiplier of the lifting equation',
	formula: 'FM from a table by lifts per minute, duration and height of the hands',
	source: 'DHHS (NIOSH) Publication 94-110, rev. 9/2021, Table 5; linear between rows (p. 7)',
	validity: '0 to 15 lifts a minute, up to 8 h; above 15 no lifting at all.'
};

export type LiftingDuration = 'up to 1 h' | '1 to 2 h' | '2 to 8 h';

// Lifts per minute; then hands below and from knuckle height, for each duration in turn.
const ROWS: readonly (readonly [number, number, number, number, number, number, number])[] = [
	[0.2, 1, 1, 0.95, 0.95, 0.85, 0.85],
	[0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
	[1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
	[2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
	[3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
	[4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
	[5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
	[6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
	[7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
	[8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
	[9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
	[10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
	[11, 0.41, 0.41, 0, 0.23, 0, 0],
	[12, 0.37, 0.37, 0, 0.21, 0, 0],
	[13, 0, 0.34, 0, 0, 0, 0],
	[14, 0, 0.31, 0, 0, 0, 0],
	[15, 0, 0.28, 0, 0, 0, 0]
];
const COLUMNS: Readonly<Record<LiftingDuration, 1 | 3 | 5>> = {
	'up to 1 h': 1,
	'1 to 2 h': 3,
	'2 to 8 h': 5
};

/**
 * Frequency multiplier, 0 to 1. Below 0.2 lifts a minute the table's first row holds, above 15 the
 * multiplier is 0, both as published.
 *
 * @param fromKnuckleHeight - whether the hands are at or above 75 cm (30 in) where the lift begins
 * @throws RangeError for a frequency outside 0 to 60 a minute
 */
export function frequencyMultiplier({
	liftsPerMin,
	duration,
	fromKnuckleHeight
}: {
	liftsPerMin: number;
	duration: LiftingDuration;
	fromKnuckleHeight: boolean;
}): number {
	assertWithin(liftsPerMin, 0, 60, 'liftsPerMin');
	const column = (COLUMNS[duration] + (fromKnuckleHeight ? 1 : 0)) as 1 | 2 | 3 | 4 | 5 | 6;
	const after = ROWS.findIndex(([lifts]) => lifts >= liftsPerMin);
	const high = ROWS[after];
	if (!high) return 0;
	const low = ROWS[after - 1];
	if (!low) return high[column];
	// Between an allowed row and a forbidden one the forbidden one holds.
	if (high[column] === 0 && liftsPerMin > low[0]) return 0;
	const share = (liftsPerMin - low[0]) / (high[0] - low[0]);
	return low[column] + share * (high[column] - low[column]);
}
