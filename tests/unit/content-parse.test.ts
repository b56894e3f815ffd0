import { describe, expect, test } from 'vitest';
import { contentHash } from '../../src/lib/core/content/content-hash';
import { nameOf, parseDocument } from '../../src/lib/core/content/parse-document';
import {
	glossarySchema,
	lessonSchema,
	stepSchema,
	troubleSchema
} from '../../src/lib/core/content/schemas';

const PATH = 'content/steps/07-sand.md';

function stepText(change: Record<string, string | null> = {}): string {
	const fields: Record<string, string | null> = {
		title: 'Sand it',
		phase: 'pattern',
		summary: 'Sand the foot flat.',
		hurts: '[sanding-dust]',
		ppe: '[dust-mask]',
		ventilation: 'general',
		tools: '[Abrasive block]',
		checks: '[No gap at the foot]',
		wrongSigns: '[It rocks]',
		source: 'common practice, no source',
		...change
	};
	const lines = Object.entries(fields)
		.filter(([, value]) => value !== null)
		.map(([key, value]) => `${key}: ${value}`);
	return `---\n${lines.join('\n')}\n---\n\nSand it.\n`;
}

function problem(change: Record<string, string | null>): string {
	try {
		parseDocument(stepSchema, PATH, stepText(change));
	} catch (error) {
		return error instanceof Error ? error.message : '';
	}
	return '';
}

describe('a good file', () => {
	test('becomes its front matter, slug, order, HTML and hash', () => {
		const step = parseDocument(stepSchema, PATH, stepText());
		expect(step).toMatchObject({
			slug: 'sand',
			order: 7,
			phase: 'pattern',
			tools: ['Abrasive block']
		});
		expect(step.html).toBe('<p>Sand it.</p>\n');
		expect(step.hash).toBe(contentHash(stepText()));
	});

	test('may have the line ends of another system, which change its hash', () => {
		const dos = stepText().replaceAll('\n', '\r\n');
		const step = parseDocument(stepSchema, PATH, dos);
		expect(step.html.trim()).toBe('<p>Sand it.</p>');
		expect(step.hash).not.toBe(contentHash(stepText()));
	});
});

describe('a broken file names the file, the field and the reason', () => {
	test.each([
		['an unknown hazard', { hurts: '[dragons]' }, 'hurts[0]', 'isocyanate'],
		['an unknown PPE', { ppe: '[cape]' }, 'ppe[0]', 'respirator'],
		['an unknown phase', { phase: 'lunch' }, 'phase', 'gloveCure'],
		['an unknown ventilation', { ventilation: 'a fan' }, 'ventilation', 'local exhaust'],
		['a missing source', { source: null }, 'source', 'expected string'],
		['a blank title', { title: '"  "' }, 'title', 'Too small'],
		['a title of ten thousand letters', { title: 'x'.repeat(10_000) }, 'title', 'Too big'],
		['a number for a title', { title: '12' }, 'title', 'expected string'],
		['no checks', { checks: '[]' }, 'checks', 'Too small'],
		['a hazard named twice', { hurts: '[knife, knife]' }, 'hurts', 'same thing twice']
	])('%s', (_, change, field, reason) => {
		const message = problem(change);
		expect(message).toContain(PATH);
		expect(message).toContain(`at ${field}`);
		expect(message).toContain(reason);
	});

	test('a misspelt key', () => {
		const message = problem({ wrongSings: '[typo]' });
		expect(message).toContain(PATH);
		expect(message).toContain('wrongSings');
	});

	test('every field at once, not only the first', () => {
		const message = problem({ hurts: '[dragons]', phase: 'lunch', source: null });
		for (const field of ['hurts[0]', 'phase', 'source']) expect(message).toContain(`at ${field}`);
	});

	test('front matter that is missing, not YAML, or without a body', () => {
		const parse = (text: string) => () => parseDocument(stepSchema, PATH, text);
		expect(parse('Sand it.')).toThrow(`${PATH}: front matter: none found`);
		expect(parse('---\ntitle: [a\n---\nBody')).toThrow(`${PATH}: front matter is not YAML`);
		expect(parse('---\ntitle: a\ntitle: b\n---\nBody')).toThrow(/unique/i);
		expect(parse(stepText().replace('\nSand it.\n', ''))).toThrow(`${PATH}: body: empty`);
	});

	test.each(['content/steps/01-.md', 'content/steps/Sand It.md', 'content/steps/01-sand.txt'])(
		'a file name that gives no slug: %s',
		(path) => expect(() => nameOf(path)).toThrow(`${path}: file name: accepted is NN-slug.md`)
	);
});

describe('rules of single collections', () => {
	const lesson = (question: string, about = 'phase: build') =>
		`---\ntitle: T\nsummary: S\n${about}\nsource: S\nquestions:\n${question.repeat(4)}---\nBody\n`;
	const question = (right: number) =>
		`  - { ask: Why, answers: [One, Two], right: ${right}, because: So }\n`;
	const parse = (text: string) => () => parseDocument(lessonSchema, 'content/lessons/a.md', text);

	test('the right answer of a question is one of its answers', () => {
		expect(parse(lesson(question(1)))).not.toThrow();
		expect(parse(lesson(question(2)))).toThrow(
			/points past the last answer[\s\S]*questions\[0\]\.right/
		);
		expect(parse(lesson(question(-1)))).toThrow(/questions\[0\]\.right/);
		expect(parse(lesson(question(0.5)))).toThrow(/questions\[0\]\.right/);
	});

	test('a lesson is about a phase or a hazard, and not both', () => {
		expect(parse(lesson(question(0), 'hazard: knife'))).not.toThrow();
		expect(parse(lesson(question(0), 'phase: build\nhazard: knife'))).toThrow(/only one of them/);
		expect(parse(lesson(question(0), ''))).toThrow(/only one of them/);
	});

	test('a trouble names phases that exist and a severity', () => {
		const text =
			'---\ntitle: T\nsign: S\nact: A\nphases: [dream]\nseverity: bad\nsource: S\n---\nBody';
		const trouble = () => parseDocument(troubleSchema, 'content/troubles/a.md', text);
		expect(trouble).toThrow(/phases\[0\]/);
		expect(trouble).toThrow(/severity/);
	});

	test('a glossary explains a term once', () => {
		const text =
			'---\ntitle: T\nsource: S\nterms: [{ term: Wax, meaning: A }, { term: wax, meaning: B }]\n---\nBody';
		expect(() => parseDocument(glossarySchema, 'content/glossary.md', text)).toThrow(
			/same term twice/
		);
	});
});

// FIPS 180-4; digests as printed in the NIST example values for SHA-256: the one-block message "abc",
// the two-block message, and the empty message.
test.each([
	['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
	[
		'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
		'248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1'
	],
	['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855']
])('the hash of %j is its SHA-256', (text, digest) => expect(contentHash(text)).toBe(digest));
