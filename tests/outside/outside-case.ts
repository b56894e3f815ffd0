import { expect, test } from 'vitest';

/** One row of the table that `npm run outside` prints. */
export interface OutsideRow {
	what: string;
	source: string;
	unit: string;
	expected: number;
	got: number;
	/** Absolute tolerance in `unit`. */
	tolerance: number;
	/** Line of its file on which the case begins, from which its laws are read. */
	line: number;
}

declare module 'vitest' {
	interface TaskMeta {
		outside?: OutsideRow;
	}
}

interface OutsideCase {
	/** What is checked, in a few words; also the name of the test. */
	what: string;
	/**
	 * Author, year, title or standard number; "common practice, no source" for a fact of the trade;
	 * ends in "(from memory)" until a text confirms the value.
	 */
	source: string;
	unit: string;
	expected: number;
	/** A function, so that a throw fails its own case only. */
	got: number | (() => number);
	/** Absolute, in `unit`; or `{ fraction }` of the expected value. Taken from the source. */
	tolerance: number | { fraction: number };
}

/** Line in the file of cases that called, which the stack names. */
function lineOfCaller(): number {
	const [, line] = /\.test\.ts:(\d+):\d+/.exec(new Error().stack ?? '') ?? [];
	return Number(line ?? Number.NaN);
}

/**
 * Checks one number of ours against one from outside the code, and leaves the row for the table.
 * The row is left before the comparison, so that a deviation shows in the table as well.
 */
export function outsideCase({ what, source, unit, expected, got, tolerance }: OutsideCase): void {
	const line = lineOfCaller();
	test(`${what} [${source}]`, ({ task }) => {
		const value = typeof got === 'function' ? got() : got;
		const allowed =
			typeof tolerance === 'number' ? tolerance : Math.abs(expected) * tolerance.fraction;
		task.meta.outside = { what, source, unit, expected, got: value, tolerance: allowed, line };

		expect(source.length, 'an outside case names its source').toBeGreaterThan(5);
		expect(
			Math.abs(value - expected),
			`got ${value} ${unit}, expected ${expected} ± ${allowed}`
		).toBeLessThanOrEqual(allowed + 1e-12 * Math.abs(expected));
	});
}
