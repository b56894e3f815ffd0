import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
	groupSummary,
	isCurrent,
	readmeBlock,
	withBlock,
	type GroupedRow
} from '../outside/outside-table';

const readme = readFileSync('README.md', 'utf8');
const page = readFileSync('docs/outside-checks.md', 'utf8');

const cellsOf = (line: string): string[] =>
	line
		.split('|')
		.slice(1, -1)
		.map((cell) => cell.trim());

/** Rows of the table under a heading, or of the whole text. */
function tableRows(text: string, columns: number): string[][] {
	return text
		.split('\n')
		.filter((line) => line.startsWith('|') && !/^\|[\s|:-]+\|$/.test(line))
		.map(cellsOf)
		.filter((cells) => cells.length === columns)
		.slice(1);
}

const block = /<!-- outside checks:[\s\S]*<!-- end of outside checks -->/.exec(readme)?.[0] ?? '';
const closing = /\d+ outside checks from .*\./;

describe('the outside checks in the README', () => {
	test('say the same as the full table in docs', () => {
		expect(closing.exec(block)?.[0]).toBe(closing.exec(page)?.[0]);
		expect(readme).toContain('(docs/outside-checks.md)');
	});

	test('count every case of the full table, and every file of cases', () => {
		const cases = tableRows(page.slice(page.indexOf('## Every case')), 7);
		const groups = tableRows(block, 5);
		expect(groups.reduce((sum, [, checks]) => sum + Number(checks), 0)).toBe(cases.length);
		expect(block).toContain(`${cases.length} outside checks`);
		const files = readdirSync('tests/outside').filter(
			(file) =>
				file.endsWith('.test.ts') &&
				readFileSync(`tests/outside/${file}`, 'utf8').includes('outsideCase(')
		);
		expect(groups).toHaveLength(files.length);
	});
});

describe('a row of the summary', () => {
	const row = (got: number, group = 'cure'): GroupedRow => ({
		what: 'a',
		source: 'Somebody 1900',
		unit: 'g',
		expected: 100,
		got,
		tolerance: 1,
		group
	});

	test('shows the worst deviation, and a check that is off', () => {
		expect(groupSummary([row(100.5), row(99.2)])).toContain('| 2 | 1 | 0.80 % | all |');
		expect(groupSummary([row(103)])).toContain('NOT ALL');
	});

	test('is current however it is padded, and not when a number changed', () => {
		const padded = readmeBlock([row(100.5)])
			.replaceAll('| ', '|   ')
			.replaceAll('---', '-----');
		expect(isCurrent(padded, [row(100.5)])).toBe(true);
		expect(isCurrent(padded, [row(100.9)])).toBe(false);
	});

	test('is put between the marks, and nowhere else', () => {
		const text = `before\n${readmeBlock([row(100)])}\nafter`;
		const renewed = withBlock(text, readmeBlock([row(100), row(101)]));
		expect(renewed.startsWith('before\n')).toBe(true);
		expect(renewed.endsWith('\nafter')).toBe(true);
		expect(renewed).toContain('2 outside checks');
		expect(() => withBlock('no marks', 'x')).toThrow('marks');
	});
});
