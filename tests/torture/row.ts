/** One line of the table that `npm run torture` prints. */
export interface Row {
	what: string;
	/** What was asked for and what was done, for example "200 of 200 kills". */
	done: string;
	found: string;
	isGood: boolean;
	/** Nothing wrong was found, but the time was up before all of it was done. */
	isCut?: boolean;
}

/** The table as text; a proof that was cut short by time is not one. */
export function tableOf(rows: readonly Row[]): string {
	const cells = rows.map(({ what, done, found, isGood, isCut }) => [
		isGood ? 'holds    ' : isCut ? 'cut short' : 'FAILS    ',
		what,
		done,
		found
	]);
	const widths = [0, 1, 2].map((column) =>
		Math.max(...cells.map((row) => row[column]?.length ?? 0))
	);
	return cells
		.map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  '))
		.join('\n');
}
