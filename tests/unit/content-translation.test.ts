import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Files } from '../../src/lib/core/content/library';
import { readAll } from '../../src/lib/core/content/read-all';

const onDisk: Files = Object.fromEntries(
	readdirSync('content', { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.md'))
		.map((name) => [`content/${name}`, readFileSync(`content/${name}`, 'utf8')])
);
const spanish = Object.keys(onDisk).filter((path) => path.startsWith('content/es/'));
const { library, byLang } = readAll(onDisk);
const WAX = 'content/es/steps/05-wax.md';
const ofSpanish = (path: string) => onDisk[path] ?? '';
const ofEnglish = (path: string) => onDisk[path.replace('/es/', '/')] ?? '';
/** What a reader sees: without the front matter that only the program reads. */
const shown = (text: string) => text.replace(/^(of|signs|readMin|hazards|hurts|ppe):.*$/gm, '');

describe('the Spanish texts', () => {
	test('are there for every step, briefing and trouble, and keep what is not words', () => {
		for (const shelf of ['steps', 'briefings', 'troubles'] as const) {
			expect([...byLang.es[shelf].keys()]).toEqual([...library[shelf].keys()]);
		}
		expect(byLang.es.steps.get('wax')).toMatchObject({ phase: 'release', hurts: ['solvent'] });
		expect(byLang.es.briefings.get('isocyanates')?.signs).toEqual(
			library.briefings.get('isocyanates')?.signs
		);
	});

	// A figure that is lost or changed on the way is what hurts: grams, degrees, minutes, limits.
	test.each(spanish)('%s says the same numbers as the English text', (path) => {
		const numbers = (text: string) => (shown(text).match(/\d+(?:\.\d+)?/g) ?? []).sort();
		expect(numbers(ofSpanish(path))).toEqual(numbers(ofEnglish(path)));
	});

	test.each(spanish)('%s has as many headings, points and stressed words', (path) => {
		const body = (text: string) => text.split('\n---\n')[1] ?? '';
		for (const mark of [/^## /gm, /^\s*(?:\d+\.|-) /gm, /\*\*/g]) {
			const count = (text: string) => (body(text).match(mark) ?? []).length;
			expect(count(ofSpanish(path)), String(mark)).toBe(count(ofEnglish(path)));
		}
	});
});

describe('a translation that does not keep up', () => {
	test('is named when it is missing', () => {
		const rest = Object.fromEntries(Object.entries(onDisk).filter(([path]) => path !== WAX));
		expect(() => readAll(rest)).toThrow(
			'content/es/steps/05-wax.md: missing, but the English text is there'
		);
	});

	test('is named when the English text has changed since, with what to write', () => {
		const changed = {
			...onDisk,
			[WAX.replace('/es/', '/')]: `${ofEnglish(WAX)}\nOne more line.\n`
		};
		expect(() => readAll(changed)).toThrow(
			/content\/es\/steps\/05-wax\.md: of: the English text has changed since\..*[0-9a-f]{64} here/
		);
	});

	test('is named when an item of a list was left out', () => {
		const short = ofSpanish(WAX).replace(/^checks:\n {2}- .*\n/m, 'checks:\n');
		expect(() => readAll({ ...onDisk, [WAX]: short })).toThrow(
			'content/es/steps/05-wax.md: checks: has 2 items, the English text 3'
		);
	});

	test('is named when there is no English text of its name', () => {
		const extra = { ...onDisk, 'content/es/troubles/99-gremlins.md': ofSpanish(WAX) };
		expect(() => readAll(extra)).toThrow('there is no English text of this name');
	});
});
