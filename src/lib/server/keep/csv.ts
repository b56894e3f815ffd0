type Cell = string | number | boolean | null | undefined;

/**
 * One line of CSV. A text that a spreadsheet would take for a formula begins with an apostrophe here; the
 * JSON Lines have it as it is. Source: RFC 4180 (2005); OWASP, CSV Injection.
 */
export function csvLine(cells: readonly Cell[]): string {
	return `${cells.map(csvCell).join(',')}\r\n`;
}

function csvCell(cell: Cell): string {
	if (cell === null || cell === undefined) return '';
	if (typeof cell !== 'string') return String(cell);
	const text = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
	return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
