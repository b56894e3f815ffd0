import { readdirSync } from 'node:fs';
import { isFromOutside, markOf, MARKS } from './marks';
import type { OutsideRow } from './outside-case';

type LawRow = Pick<OutsideRow, 'source'> & { laws: readonly string[] };

/** Every file of laws, without its ending. */
export const lawFiles = (): string[] =>
	readdirSync('src/lib/core/laws').map((file) => file.replace(/\.ts$/, ''));

/**
 * Laws for which no number exists outside, and why. They say so themselves: the source of each is
 * common practice or plain addition. `laws-outside.test.ts` holds this list as short as it can be.
 */
export const WITHOUT_OUTSIDE: Readonly<Record<string, string>> = {
	'adding-order': 'an order, not a number',
	'coat-losses': 'a plain sum of what the shop weighs',
	'never-all-clear': 'a sentence, not a number',
	waste: 'plain sums of what the shop weighs'
};

/** One line a law: how many cases call it, how many of them come from outside, and what they rest on. */
export function lawsTable(rows: readonly LawRow[]): string {
	const lines = lawFiles().map((law) => {
		const mine = rows.filter(({ laws }) => laws.includes(law));
		const outside = mine.filter(isFromOutside).length;
		const marks = MARKS.flatMap((mark) => {
			const count = mine.filter((row) => markOf(row) === mark).length;
			return count > 0 ? [`${count} ${mark}`] : [];
		});
		const why = WITHOUT_OUTSIDE[law];
		const held = [...marks, ...(why ? [`none from outside: ${why}`] : [])].join(', ');
		return `| ${law} | ${mine.length} | ${outside} | ${held || 'nothing'} |`;
	});
	return [
		'| law | checks | from outside | what they rest on |',
		'|---|---|---|---|',
		...lines
	].join('\n');
}
