import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../scripts/content-plugin';
import { readLibrary, type Files } from '../../src/lib/core/content/library';
import {
	BRIEFING_SLUGS,
	HAZARD_IDS,
	HAZARDS,
	PHASE_IDS,
	PPE,
	PPE_IDS,
	SIGNS,
	STEP_SLUGS,
	TROUBLE_IDS
} from '../../src/lib/core/content/vocabulary';
import {
	briefings,
	caution,
	glossary,
	lessons,
	steps,
	troubles
} from '../../src/lib/server/content';

const onDisk: Files = Object.fromEntries(
	readdirSync('content', { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.md'))
		.map((name) => [`content/${name}`, readFileSync(`content/${name}`, 'utf8')])
);

function without(end: string): Files {
	return Object.fromEntries(Object.entries(onDisk).filter(([path]) => !path.endsWith(end)));
}

describe('the content as it is', () => {
	test('has every step, trouble and briefing that a job links to', () => {
		expect([...steps.keys()]).toEqual([...STEP_SLUGS]);
		expect([...troubles.keys()].sort()).toEqual([...TROUBLE_IDS].sort());
		expect([...briefings.keys()]).toEqual([...BRIEFING_SLUGS]);
		expect(lessons.size).toBeGreaterThanOrEqual(8);
		expect(caution.html).toContain('planning aid');
		expect(glossary.terms.length).toBeGreaterThan(30);
	});

	test('keeps the SHA-256 of each file as the server read it', () => {
		const wax = onDisk['content/steps/05-wax.md'] ?? '';
		expect(steps.get('wax')?.hash).toBe(createHash('sha256').update(wax, 'utf8').digest('hex'));
	});

	test('covers every phase but no step twice, in the order of the work', () => {
		const phases = [...steps.values()].map(({ phase }) => PHASE_IDS.indexOf(phase));
		expect(new Set(phases).size).toBe(PHASE_IDS.length);
		// Weighing and mixing stands before the detail coat that needs it, though it belongs to the build.
		const inOrder = [...steps.values()].filter(({ slug }) => slug !== 'weigh-and-mix');
		const order = inOrder.map(({ phase }) => PHASE_IDS.indexOf(phase));
		expect(order).toEqual([...order].sort((a, b) => a - b));
	});

	test('has a briefing and a protection for every hazard that a step names', () => {
		const briefed = new Set([...briefings.values()].flatMap(({ hazards }) => hazards));
		for (const step of steps.values()) {
			for (const hazard of step.hurts) expect(briefed, `${step.slug}: ${hazard}`).toContain(hazard);
		}
		for (const hazard of HAZARD_IDS) expect(briefed).toContain(hazard);
	});

	test('asks for gloves, eye protection and extraction wherever a liquid part is open', () => {
		const open = [...steps.values()].filter(
			({ hurts, phase }) =>
				phase !== 'brief' &&
				hurts.some((hazard) => ['isocyanate', 'amine', 'styrene', 'peroxide'].includes(hazard))
		);
		expect(open.length).toBeGreaterThan(5);
		for (const step of open) {
			expect(step.ppe, step.slug).toContain('gloves');
			expect(step.ppe, step.slug).toContain('eye-protection');
			expect(step.ventilation, step.slug).toBe('local exhaust');
		}
	});

	test('has a trouble for every phase, and something to see and do in each', () => {
		for (const phase of PHASE_IDS) {
			expect(
				[...troubles.values()].some(({ phases }) => phases.includes(phase)),
				phase
			).toBe(true);
		}
		for (const { slug, html } of troubles.values()) expect(html, slug).toMatch(/<h2>Act/);
	});

	test('does not give the right answers away by their place', () => {
		const rights = [...lessons.values()].flatMap(({ questions }) =>
			questions.map(({ right }) => right)
		);
		for (const place of [0, 1, 2]) {
			expect(rights.filter((right) => right === place).length / rights.length).toBeLessThan(0.5);
			expect(rights).toContain(place);
		}
	});

	test('asks every question with answers that differ', () => {
		for (const { slug, questions } of lessons.values()) {
			for (const { ask, answers } of questions) {
				expect(new Set(answers).size, `${slug}: ${ask}`).toBe(answers.length);
			}
		}
	});

	test('shows no inline style, which the page policy would block', () => {
		const all = [
			...steps.values(),
			...briefings.values(),
			...troubles.values(),
			...lessons.values()
		];
		for (const { slug, html } of all) expect(html, slug).not.toContain('style=');
	});
});

test('every hazard and every PPE has a sign that is in the list', () => {
	for (const id of HAZARD_IDS) expect(SIGNS).toHaveProperty(HAZARDS[id].sign);
	for (const id of HAZARD_IDS) expect(HAZARDS[id].sign).toMatch(/^W/);
	for (const id of PPE_IDS) expect(SIGNS).toHaveProperty(PPE[id].sign);
	for (const id of PPE_IDS) expect(PPE[id].sign).toMatch(/^M/);
});

describe('reading all of it', () => {
	test('names a file that a job links to and that is missing', () => {
		expect(() => readLibrary(without('steps/05-wax.md'))).toThrow(
			'content/steps/NN-wax.md: missing'
		);
		expect(() => readLibrary(without('cautions.md'))).toThrow('content/cautions.md: missing');
		expect(() => readLibrary(without('glossary.md'))).toThrow('content/glossary.md: missing');
	});

	test('names two files with one slug', () => {
		const wax = onDisk['content/steps/05-wax.md'] ?? '';
		expect(() => readLibrary({ ...onDisk, 'content/steps/44-wax.md': wax })).toThrow(
			'content/steps/44-wax.md: slug: "wax" is taken by content/steps/05-wax.md'
		);
	});

	test('names a trouble that the process does not know', () => {
		const sag = onDisk['content/troubles/13-sag.md'] ?? '';
		expect(() => readLibrary({ ...onDisk, 'content/troubles/17-gremlins.md': sag })).toThrow(
			'content/troubles/17-gremlins.md: slug: "gremlins" is not one of off-ratio'
		);
	});

	test('lists the problems of several files in one go', () => {
		const broken = { ...onDisk, 'content/steps/50-a.md': 'x', 'content/lessons/50-b.md': 'y' };
		expect(() => readLibrary(broken)).toThrow(/steps\/50-a\.md[\s\S]*lessons\/50-b\.md/);
	});
});

test('a build stops at a broken file and names it, the field and the reason', async () => {
	await expect(checkContent('.')).resolves.toBeUndefined();
	const folder = mkdtempSync(join(tmpdir(), 'content-'));
	try {
		cpSync('content', folder, { recursive: true });
		const path = join(folder, 'steps/05-wax.md');
		writeFileSync(path, readFileSync(path, 'utf8').replace('phase: release', 'phase: polish'));
		await expect(checkContent('.', folder)).rejects.toThrow(
			/content\/steps\/05-wax\.md\n.*expected one of.*\n.*at phase/
		);
	} finally {
		rmSync(folder, { recursive: true });
	}
});
