import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const rows = readFileSync('DEVELOPERS.md', 'utf8')
	.split('## Security, item by item')[1]
	?.split('\n## ')[0]
	?.split('\n')
	.filter((line) => /^\| \d/.test(line))
	.map((line) => line.split('|').map((cell) => cell.trim()));

/** Where a name in the table lies. */
function placesOf(name: string): string[] {
	if (name.startsWith('unit/') || name.startsWith('e2e/')) return [`tests/${name}.test.ts`];
	if (name.startsWith('server/')) return [`src/lib/${name}`];
	if (name.startsWith('routes/')) return [`src/${name}`];
	return [name, `src/${name}`];
}

test('what is held is held by files that are there; what is not says so', () => {
	expect(rows?.length).toBeGreaterThan(30);
	for (const [, items, held = '', where = ''] of rows ?? []) {
		const names = [...where.matchAll(/`([^`]+)`/g)].map(([, name = '']) => name);
		const missing = names.filter((name) => !placesOf(name).some((place) => existsSync(place)));
		expect(missing, items).toEqual([]);
		if (names.length === 0) expect(held, items).toMatch(/^(no|partly):/);
	}
});
