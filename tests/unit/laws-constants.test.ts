import { describe, expect, test } from 'vitest';

const files = {
	...import.meta.glob<string>('../../src/lib/core/laws/*.ts', {
		eager: true,
		query: '?raw',
		import: 'default'
	}),
	...import.meta.glob<string>('../../src/lib/core/plan/*.ts', {
		eager: true,
		query: '?raw',
		import: 'default'
	})
};

/** Words by which a comment says where a constant comes from, or that it comes from nowhere. */
const SAYS_WHERE =
	/common practice|from memory|no source|assumption|exact|choice|IUPAC|CODATA|SI Brochure|ISO \d|ASTM|NIOSH|NIST|HSE|CFR|GUM|Çengel|ACGIH|tabulated/i;

interface Constant {
	path: string;
	name: string;
	/** Comment above it, its own line, and the laws of its file. */
	around: string;
}

/** Constants at the top of a file whose value begins with a number of more than one significant digit. */
function numbersIn(path: string, text: string): Constant[] {
	const lines = text.split('\n');
	return lines.flatMap((line, i) => {
		const found = /^(?:export )?const ([A-Z][A-Z0-9_]+)(?::[^=]+)? = (-?[\d._]+(?:e-?\d+)?)\b/.exec(
			line
		);
		if (!found) return [];
		const [, name = '', value = ''] = found;
		// 0, 1, 2, 12 and powers of ten convert units or count; they are no facts.
		if (/^-?(0|1|2|12|3600|86_400|60|10+|1(_000)+|0\.0*1|1e-?\d+)$/.test(value)) return [];
		let from = i;
		while (from > 0 && /^\s*(\/\*\*|\*|\/\/)/.test(lines[from - 1] ?? '')) from -= 1;
		return { path, name, around: lines.slice(from, i + 1).join(' ') };
	});
}

const constants = Object.entries(files).flatMap(([path, text]) => numbersIn(path, text));

describe('no number without a source, or the words that it has none', () => {
	test('there are constants to look at', () => {
		expect(constants.length).toBeGreaterThan(15);
	});

	test.each(
		constants.map(({ path, name, around }) => [
			`${path.replace(/.*core\//, '')} ${name}`,
			path,
			around
		])
	)('%s', (_what, path, around) => {
		const sources = [...(files[path as keyof typeof files] ?? '').matchAll(/source:\s*['"\n]/g)];
		const says = SAYS_WHERE.test(around ?? '');
		const named = /\/\*\*|\/\//.test(around ?? '');
		// A comment of its own, or a law in the same file whose source covers it.
		expect(says || (named && sources.length > 0), around).toBe(true);
	});

	test('every default says that it is common practice, by the function that shows it', () => {
		const text =
			Object.entries(files).find(([path]) => path.endsWith('plan/defaults.ts'))?.[1] ?? '';
		expect(text).toContain('(common practice, no source)');
	});

	test('every law written in the plan names a source', () => {
		for (const [path, text] of Object.entries(files)) {
			for (const [law] of text.matchAll(/: Law = \{[^}]*\}/g)) {
				expect(law, path).toMatch(/source:\s*\n?\s*['"`].{5}/);
			}
		}
	});
});
