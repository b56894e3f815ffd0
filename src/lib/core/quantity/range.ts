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

/**
 * Range of a function whose arguments have ranges: its least and greatest over all combinations of
 * their ends. Exact for a function that is monotonic in each argument; all ends at once, so it never
 * understates what independent errors would give.
 *
 * Source: interval arithmetic, as in IEEE 1788-2015 for monotonic functions.
 *
 * @param given - every argument, one that is certain with `low` equal to `high`
 * @returns null when the function takes none of the combinations, each beyond its limits
 * @throws RangeError for more than eight uncertain arguments, or a range with its ends swapped
 */
export function rangeOver(
	given: readonly Range[],
	compute: (...values: number[]) => number
): Range | null {
	const uncertain = given.filter(({ low, high }) => low !== high).length;
	if (uncertain > MOST_UNCERTAIN) {
		throw new RangeError(`${uncertain} uncertain arguments; accepted: ${MOST_UNCERTAIN} at most`);
	}
	let corners: number[][] = [[]];
	for (const { low, high } of given) {
		if (low > high) throw new RangeError(`a range from ${low} to ${high}; accepted: low first`);
		const ends = low === high ? [low] : [low, high];
		corners = corners.flatMap((corner) => ends.map((end) => [...corner, end]));
	}
	const found = corners.flatMap((corner) => withinLimits(() => compute(...corner)));
	return found.length === 0 ? null : { low: Math.min(...found), high: Math.max(...found) };
}

/** A law's own limit may lie inside a range; beyond it there is no number to count. */
function withinLimits(compute: () => number): number[] {
	try {
		const value = compute();
		return Number.isFinite(value) ? [value] : [];
	} catch (error) {
		if (error instanceof RangeError) return [];
		throw error;
	}
}

/** A range in steps that a scale or a gauge shows: down at its lower end, up at its upper one, so that it never shrinks. */
export function roundedOutward({ low, high }: Range, step: number): Range {
	return { low: roundDownTo(low, step), high: roundUpTo(high, step) };
}
