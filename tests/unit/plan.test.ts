import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planHash } from '../../src/lib/core/plan/plan-hash';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
import { detailInputs, testInputs, testSheet } from '../fixtures/materials';

const codes = (plan: Plan, severity?: string) =>
	plan.warnings.filter((w) => !severity || w.severity === severity).map(({ code }) => code);

const at = (value: unknown, path: string): unknown =>
	path
		.split('.')
		.reduce<unknown>((now, key) => (now as Record<string, unknown> | undefined)?.[key], value);

describe('a whole plan', () => {
	test.each([
		['without detail coats', testInputs()],
		['with detail coats', detailInputs()]
	])('%s fits its schema, and nothing refuses it', (_what, inputs) => {
		const plan = makePlan(inputs);
		expect(planSchema.parse(plan)).toEqual(plan);
		expect(codes(plan, 'refuse')).toEqual([]);
	});

	test('is pure: the same inputs give the same hash, and are left as they were', () => {
		const inputs = detailInputs();
		const before = structuredClone(inputs);
		expect(planHash(makePlan(inputs))).toBe(planHash(makePlan(structuredClone(inputs))));
		expect(inputs).toEqual(before);
		expect(planHash(makePlan(inputs))).not.toBe(planHash(makePlan(testInputs())));
	});

	test('keeps its hash through JSON, and its own inputs give it again', () => {
		const plan = makePlan(detailInputs());
		expect(planHash(JSON.parse(JSON.stringify(plan)) as Plan)).toBe(planHash(plan));
		expect(planHash(makePlan(plan.inputs))).toBe(planHash(plan));
	});

	test.each([testInputs(), detailInputs()])(
		'every figure stands at its path, with a law that has a source',
		(inputs) => {
			const plan = makePlan(inputs);
			expect(Object.keys(plan.figures).length).toBeGreaterThan(80);
			for (const [path, figure] of Object.entries(plan.figures)) {
				expect(at(plan, path), path).toBe(figure.value);
				expect(figure.law.source.length, path).toBeGreaterThan(5);
				expect(figure.inputs.length, path).toBeGreaterThan(0);
				for (const { figure: other, symbol, value } of figure.inputs) {
					if (other) expect(plan.figures[other]?.value, `${path}: ${symbol}`).toBe(value);
				}
			}
		}
	);

	test('every number that a person weighs, waits for or buys by can be opened', () => {
		const { figures, coats, shell, order } = makePlan(detailInputs());
		const wanted = [
			...coats.flatMap((coat, i) =>
				[
					'thicknessMm',
					'volumeMl',
					'massG',
					'largestCupG',
					'tackTestS',
					'windowClosesS',
					'workingS',
					'cups.0.parts.0.massG'
				]
					.concat(coat.brushBackS === null ? [] : ['brushBackS'])
					.map((key) => `coats.${i}.${key}`)
			),
			...shell.rounds.flatMap((_, i) =>
				['massG', 'largestCupG', 'windowClosesS'].map((key) => `shell.rounds.${i}.${key}`)
			),
			...order.flatMap((_, i) =>
				['needG', 'safeG', 'boughtG', 'leftoverG', 'price'].map((key) => `order.${i}.${key}`)
			),
			...['gloveG', 'shellG', 'frameG', 'filledG'].map((key) => `weights.${key}`),
			...['materials', 'labor', 'total', 'perPart', 'laborS'].map((key) => `cost.${key}`),
			...['rubberMl', 'rubberG', 'gloveRubberG', 'cost', 'gloveCost', 'days', 'gloveDays'].map(
				(key) => `block.${key}`
			),
			...['exposedAreaCm2', 'volumeMl', 'flangeAreaCm2', 'coatedAreaCm2'].map(
				(key) => `surface.${key}`
			),
			...[
				'glove.thicknessMm',
				'glove.leastMm',
				'shell.thicknessMm',
				'pour.massG',
				'pour.headMm',
				'pour.pressurePa'
			],
			...[
				'gloveCure.testS',
				'shellCure.testS',
				'release.waxG',
				'release.filmG',
				'frame.gapMm',
				'shellRelease.waxG'
			]
		];
		expect(wanted.filter((path) => !figures[path])).toEqual([]);
	});

	test('inputs that the tool chose itself are named as defaults without a source', () => {
		const { figures } = makePlan(testInputs());
		const defaults = Object.values(figures).flatMap(({ inputs }) =>
			inputs.filter(({ origin }) => origin === 'default')
		);
		expect(defaults.length).toBeGreaterThan(0);
		for (const { label } of defaults) {
			expect(label).toMatch(/common practice, no source|from memory/);
		}
	});
});

describe('block against glove', () => {
	test('a large deep pattern makes the glove the better build', () => {
		expect(makePlan(testInputs()).block.better).toBe('glove');
	});

	test('a small shallow one makes the block the better build, and the plan says so', () => {
		const inputs = testInputs();
		const tile = {
			shape: 'box' as const,
			id: 'tile',
			name: 'Tile',
			on: 'board',
			against: [],
			lengthMm: 80,
			widthMm: 60,
			heightMm: 8
		};
		const plan = makePlan({
			...inputs,
			pattern: { ...inputs.pattern, body: { kind: 'solids', solids: [tile] } }
		});
		expect(plan.block.better).toBe('block');
		expect(plan.block.why).toMatch(/^A solid block makes more sense/);
		expect(plan.block.cost).toBeLessThan(plan.block.gloveCost);
		expect(plan.block.why).toContain('USD');
	});

	test('the block is the box with the same margin, less the pattern (mensuration)', () => {
		const plan = makePlan(testInputs({ frameGapMm: 30 }));
		expect(plan.block.rubberMl).toBeCloseTo((300 * 300 * 330) / 1000 - plan.surface.volumeMl, 6);
		expect(plan.block.rubberG).toBeCloseTo(plan.block.rubberMl * 1.152, 6);
	});
});

describe('gaps in a data sheet', () => {
	test('common practice stands in for a missing time, and the plan says so', () => {
		const { materials } = testInputs();
		const bare = { ...testSheet('brush-80'), tackFree: undefined, recoatCloses: undefined };
		const shell = { ...testSheet('paste-9'), demold: undefined };
		const plan = makePlan(testInputs({ materials: { ...materials, build: bare, shell } }));
		expect(plan.coats[0]?.tackTestS).toBe(60 * Math.ceil(45 * 3 ** 0.1));
		expect(plan.figures['coats.0.tackTestS']?.inputs[0]?.origin).toBe('default');
		expect(codes(plan).filter((code) => code === 'sheet-gap')).toHaveLength(2);
		expect(codes(makePlan(testInputs()))).not.toContain('sheet-gap');
	});
});

describe('undercut', () => {
	test.each([
		[0, 'none', []],
		[6, 'warn', ['shell-lock']],
		[20, 'refuse', ['shell-lock']]
	])('%s mm: %s', (undercutMm, severity, expected) => {
		const inputs = testInputs();
		const plan = makePlan({ ...inputs, pattern: { ...inputs.pattern, undercutMm } });
		expect(codes(plan, severity).filter((code) => code === 'shell-lock')).toEqual(expected);
	});

	test('a glove that would have to stretch beyond its elongation is refused', () => {
		const inputs = testInputs();
		const build = { ...testSheet('brush-80'), elongationPct: 5 };
		const plan = makePlan({
			...inputs,
			materials: { ...inputs.materials, build },
			pattern: { ...inputs.pattern, undercutMm: 8 }
		});
		expect(codes(plan, 'refuse')).toContain('undercut-stretch');
	});
});
