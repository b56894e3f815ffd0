import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
	.filter((file) => file.endsWith('.svelte'))
	.map((file) => join('src', file));

describe('what is declared in markup', () => {
	test('follows what it is made from: without $derived it would stay as it was first drawn', () => {
		const declared = files.flatMap((file) =>
			[...readFileSync(file, 'utf8').matchAll(/^\s*\{const .*$/gm)].map(
				([line]) => `${file}: ${line.trim()}`
			)
		);
		expect(declared.length).toBeGreaterThan(10);
		expect(declared.filter((line) => !/=\s*\$derived(\.by)?\(/.test(line))).toEqual([]);
	});
});
