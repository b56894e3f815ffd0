import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lawFiles, lawsTable, WITHOUT_OUTSIDE } from '../outside/laws-table';
import { lawsOfCases } from '../outside/laws-of-cases';
import { isFromOutside, markOf } from '../outside/marks';

// The README's table is written by `npm run outside`, which fails when it is not what the cases give.
const readme = readFileSync('README.md', 'utf8');
const table = /Every law, and what[\s\S]*?<\/details>/.exec(readme)?.[0] ?? '';
const outsideOf = new Map(
	[...table.matchAll(/^\|\s*([\w-]+)\s*\|\s*\d+\s*\|\s*(\d+)\s*\|/gm)].map(
		([, law = '', count]) => [law, Number(count)] as const
	)
);
const sourcesOf = (law: string): string[] =>
	[
		...readFileSync(`src/lib/core/laws/${law}.ts`, 'utf8').matchAll(/source:\s*(['"`])(.*?)\1,?\n/g)
	].map(([, , source = '']) => source);

describe('every law was held against a number from outside', () => {
	test.each(lawFiles().filter((law) => !(law in WITHOUT_OUTSIDE)))(
		'%s: published, of a second library, or exact geometry',
		(law) => {
			expect(outsideOf.get(law) ?? 0).toBeGreaterThan(0);
		}
	);

	test.each(Object.keys(WITHOUT_OUTSIDE))(
		'%s is left out only as long as its source is common practice',
		(law) => {
			expect(outsideOf.get(law), 'there is a number after all').toBe(0);
			expect(sourcesOf(law).length).toBeGreaterThan(0);
			for (const source of sourcesOf(law)) expect(source).toMatch(/common practice/i);
		}
	);
});

describe('which laws a case calls', () => {
	test('is read off the case itself, through the helpers beside it', () => {
		const laws = [...lawsOfCases('tests/outside/lifting.test.ts').values()];
		// Its limit comes from a helper that is an arrow function above the loop.
		expect(laws[0]).toEqual(['lifting', 'lifting-constants']);
		expect(laws.flat()).toContain('lifting-frequency');
		// What a case does not call by name does not count as checked.
		expect([...lawsOfCases('tests/outside/display.test.ts').values()].flat()).toEqual([]);
	});

	test('is counted by what the case rests on', () => {
		const row = (source: string) => ({ source, laws: ['dew-point'] });
		const line = lawsTable([
			row('Somebody 1900'),
			row('Somebody 1901 (from memory)'),
			row('npm library x 1.0')
		]).split('\n');
		expect(line.find((each) => each.startsWith('| dew-point '))).toBe(
			'| dew-point | 3 | 2 | 1 published, 1 a second library, 1 from memory |'
		);
		expect(line.find((each) => each.startsWith('| sag '))).toBe('| sag | 0 | 0 | nothing |');
	});
});

test('a mark never says more than the source does', () => {
	expect(markOf({ source: 'exact geometry, from memory' })).toBe('from memory');
	expect(markOf({ source: 'Python library sympy' })).toBe('a second library');
	expect(markOf({ source: 'plane geometry' })).toBe('exact geometry');
	expect(isFromOutside({ source: 'hydrostatics, worked by hand' })).toBe(false);
	expect(isFromOutside({ source: 'common practice, no source' })).toBe(false);
});
