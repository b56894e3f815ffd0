import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
	groupSummary,
	GROUPS,
	independentRows,
	isCurrent,
	readmeBlock,
	withBlock,
	type GroupedRow
} from '../outside/outside-table';

const readme = readFileSync('README.md', 'utf8');

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

describe('the outside checks in the README', () => {
	const cases = tableRows(block.slice(block.indexOf('<details>')), 7);

	test('carry every case: what, source, expected, got, deviation, all of them agreeing', () => {
		expect(block).toContain(`${cases.length} outside checks`);
		for (const [what, source, , expected, got, deviation, verdict] of cases) {
			expect([what, source].every((cell) => (cell ?? '').length > 3)).toBe(true);
			for (const number of [expected, got]) expect(Number(number)).not.toBeNaN();
			expect(deviation).toMatch(/^-?[\d.]+(e[-+]\d+)? \S+$/);
			expect(verdict).toBe('ok');
		}
	});

	test('count every case of the full table, and every file of cases by its name', () => {
		const groups = tableRows(block.slice(0, block.indexOf('<details>')), 5);
		expect(groups.reduce((sum, [, checks]) => sum + Number(checks), 0)).toBe(cases.length);
		const files = readdirSync('tests/outside').filter(
			(file) =>
				file.endsWith('.test.ts') &&
				readFileSync(`tests/outside/${file}`, 'utf8').includes('outsideCase(')
		);
		// A file without a name would make every run a partial one, and a stale block would pass.
		expect(files.map((file) => file.replace('.test.ts', '')).sort()).toEqual(
			Object.keys(GROUPS).sort()
		);
		expect(groups).toHaveLength(files.length);
	});

	test('rest on at least 120 values of at least 25 independent works', () => {
		const [, number = '', works = ''] =
			/second library: (\d+), from (\d+) independent works/.exec(block) ?? [];
		expect(Number(number)).toBeGreaterThanOrEqual(120);
		expect(Number(works)).toBeGreaterThanOrEqual(25);
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
		line: 1,
		group,
		laws: ['dew-point']
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

	test('counts one book once, and nothing recalled or worked here', () => {
		const of = (source: string) => ({ ...row(100), source });
		const rows = [
			'A & B 1959, Table 1',
			'A & B 1959, Table 2: x / 2',
			'29 CFR 1910.1000(d)(1)(ii)',
			'29 CFR 1910.1000(d)(2)(ii)',
			'C 1960 (from memory)',
			'statics, worked by hand'
		].map(of);
		expect(independentRows(rows)).toEqual({ cases: 4, works: 2 });
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
