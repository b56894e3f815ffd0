import { roundDownTo, roundUpTo } from './rounding';

/** Likely least and greatest of a number, in its own unit. */
export interface Range {
	low: number;
	high: number;
}

/** Corners double with each uncertain argument; numerical choice. */
const MOST_UNCERTAIN = 8;

/** A value with its range, so many parts of itself either way; `fraction` 0 or more. */
export function around(value: number, fraction: number): Range {
	const off = Math.abs(value) * fraction;
	return { low: value - off, high: value + off };
}

/** Why a function has no range: the limit that some of its arguments' values overstep. */
export interface NoRange {
	limit: string;
}

/** Ends closer than this share of each other are one number; rounding error, numerical choice. */
const SAME_FRACTION = 1e-9;

/**
 * Range of a function whose arguments have ranges: its least and greatest over all combinations of
 * their ends. Exact for a function that is monotonic in each argument; all ends at once, so it never
 * understates what independent errors would give.
 *
 * Source: interval arithmetic, as in IEEE 1788-2015 for monotonic functions.
 *
 * @param given - every argument, one that is certain with `low` equal to `high`
 * @returns the limit met when the function takes not every combination: a range over the rest would
 *   be cut, and leave out values that may well be true
 * @throws RangeError for more than eight uncertain arguments, or a range with its ends swapped
 */
export function rangeOver(
	given: readonly Range[],
	compute: (...values: number[]) => number
): Range | NoRange {
	const uncertain: number[] = [];
	given.forEach(({ low, high }, i) => {
		if (low > high) throw new RangeError(`a range from ${low} to ${high}; accepted: low first`);
		if (low !== high) uncertain.push(i);
	});
	if (uncertain.length > MOST_UNCERTAIN) {
		throw new RangeError(
			`${uncertain.length} uncertain arguments; accepted: ${MOST_UNCERTAIN} at most`
		);
	}
	const corner = given.map(({ low }) => low);
	let low = Infinity;
	let high = -Infinity;
	// Each bit of the counter is one uncertain argument at its low or high end.
	for (let ends = 0; ends < 1 << uncertain.length; ends += 1) {
		uncertain.forEach((argument, bit) => {
			const range = given[argument] as Range;
			corner[argument] = ends & (1 << bit) ? range.high : range.low;
		});
		const value = withinLimit(() => compute(...corner));
		if (typeof value === 'string') return { limit: value };
		low = Math.min(low, value);
		high = Math.max(high, value);
	}
	return { low, high };
}

/** The value, or the sentence that names the limit it lies beyond. */
function withinLimit(compute: () => number): number | string {
	try {
		const value = compute();
		return Number.isFinite(value) ? value : 'the law gives no number there';
	} catch (error) {
		if (error instanceof RangeError) return error.message;
		throw error;
	}
}

/** Whether both ends are one number, so that there is no range to speak of. */
export function isOneNumber({ low, high }: Range): boolean {
	return high - low <= SAME_FRACTION * Math.max(Math.abs(low), Math.abs(high));
}

/** A range in steps that a scale or a gauge shows: down at its lower end, up at its upper one, so that it never shrinks. */
export function roundedOutward({ low, high }: Range, step: number): Range {
	return { low: roundDownTo(low, step), high: roundUpTo(high, step) };
}
