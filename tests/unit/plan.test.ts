import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planHash } from '../../src/lib/core/plan/plan-hash';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
import { detailInputs, testInputs, testSheet, testShop } from '../fixtures/materials';

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

describe('proportions, against the worked numbers (common practice, no source)', () => {
	test.each([
		['brush-80', 'build', 80 / 180, 100 / 180],
		['brush-11', 'build', 0.5, 0.5],
		['paste-9', 'shell', 41 / 141, 100 / 141]
	])('%s is weighed in its ratio', (id, place, shareA, shareB) => {
		const { materials } = testInputs();
		const plan = makePlan(testInputs({ materials: { ...materials, [place]: testSheet(id) } }));
		const batch = place === 'shell' ? plan.shell.rounds[0] : plan.coats[0];
		const cup = batch?.cups[0];
		const [a, b] = ['A', 'B'].map(
			(name) => cup?.parts.find(({ part }) => part === name)?.massG ?? 0
		);
		expect((a ?? 0) / (b ?? 1)).toBeCloseTo(shareA / shareB, 2);
		expect(batch?.fractions.map(({ fraction }) => fraction)).toEqual([
			expect.closeTo(shareA, 12),
			expect.closeTo(shareB, 12)
		]);
	});

	test('the thicker part goes into the cup first', () => {
		const plan = makePlan(testInputs());
		expect(plan.coats[0]?.cups[0]?.parts.map(({ part }) => part)).toEqual(['B', 'A']);
		expect(plan.shell.rounds[0]?.cups[0]?.parts.map(({ part }) => part)).toEqual(['B', 'A']);
	});

	test('a paste with 9 minutes: no cup is more than one person lays in 9 min less mixing', () => {
		for (const pastingGPerMin of [20, 45, 60, 400]) {
			const plan = makePlan(testInputs({ shop: { ...testShop, pastingGPerMin } }));
			for (const round of plan.shell.rounds) {
				expect(round.workingS).toBe(540 - 90);
				for (const cup of round.cups) {
					expect(cup.massG).toBeLessThanOrEqual((pastingGPerMin * (540 - 90)) / 60);
					expect(cup.massG).toBeLessThanOrEqual(round.largestCupG);
				}
			}
		}
	});

	test('cups add up to their coat, read on the scale, and fill a cup of the shelf two thirds at most', () => {
		for (const scaleReadabilityG of [0.1, 0.5, 1, 5]) {
			const plan = makePlan(detailInputs({ shop: { ...testShop, scaleReadabilityG } }));
			for (const batch of [...plan.coats, ...plan.shell.rounds]) {
				const sum = batch.cups.reduce((total, cup) => total + cup.massG, 0);
				expect(sum).toBeCloseTo(batch.massG, 6);
				for (const cup of batch.cups) {
					expect(cup.parts.reduce((total, part) => total + part.massG, 0)).toBeCloseTo(
						cup.massG,
						6
					);
					for (const { massG } of cup.parts) {
						expect(
							Math.abs(massG / scaleReadabilityG - Math.round(massG / scaleReadabilityG))
						).toBeLessThan(1e-6);
					}
					expect(testShop.cupVolumesMl).toContain(cup.cupVolumeMl);
				}
			}
		}
	});
});

describe('coats', () => {
	test('thin first, thickest last, and the sum is the glove', () => {
		for (const inputs of [
			testInputs(),
			detailInputs(),
			testInputs({ gloveThicknessMm: 9.3, buildCoats: 5 })
		]) {
			const plan = makePlan(inputs);
			const build = plan.coats.filter(({ kind }) => kind === 'build');
			for (const [i, coat] of build.entries()) {
				if (i > 0) expect(coat.thicknessMm).toBeGreaterThan(build[i - 1]?.thicknessMm ?? Infinity);
			}
			const sum = plan.coats.reduce((total, coat) => total + coat.thicknessMm, 0);
			expect(sum).toBeCloseTo(plan.glove.thicknessMm, 9);
		}
	});

	test('no detail coats for coarse detail, though a material for them is chosen', () => {
		const { materials } = testInputs();
		const plan = makePlan(
			testInputs({ materials: { ...materials, detail: testSheet('flow-urethane') } })
		);
		expect(plan.detail.needed).toBe(false);
		expect(plan.coats.every(({ kind }) => kind === 'build')).toBe(true);
		expect(plan.order.some(({ materialId }) => materialId === 'flow-urethane')).toBe(false);
		expect(codes(plan)).toContain('detail-unused');
	});

	test.each([
		['a narrow recess', { narrowestRecessMm: 2.9 }, true],
		['one just wide enough', { narrowestRecessMm: 3 }, false],
		['a deep recess', { narrowestRecessMm: 6, deepestRecessMm: 13 }, true],
		['one twice as deep as wide', { narrowestRecessMm: 6, deepestRecessMm: 12 }, false],
		['a deep but wide one', { narrowestRecessMm: 40, deepestRecessMm: 200 }, false],
		['a fine line', { finestLineMm: 0.49 }, true],
		['a coarse one', { finestLineMm: 0.5 }, false],
		['nothing known', {}, false]
	])('%s: detail coats when, and only when, the rule calls for them', (_what, detail, needed) => {
		const inputs = detailInputs();
		const plan = makePlan({ ...inputs, pattern: { ...inputs.pattern, detail } });
		expect(plan.detail.needed).toBe(needed);
		expect(plan.coats.filter(({ kind }) => kind === 'detail').length).toBe(needed ? 2 : 0);
		expect(plan.detail.why).toMatch(needed ? /^Detail coats:/ : /^No detail coats:/);
	});

	test('fine detail without a free-flowing material is refused, and so is a thick one for it', () => {
		const inputs = detailInputs();
		const without = { ...inputs.materials, detail: undefined };
		expect(codes(makePlan({ ...inputs, materials: without }), 'refuse')).toContain(
			'detail-missing'
		);
		const thick = { ...inputs.materials, detail: testSheet('brush-11') };
		expect(codes(makePlan({ ...inputs, materials: thick }), 'refuse')).toContain(
			'detail-too-thick'
		);
	});

	test('a detail coat is brushed back part-way through its gel, about 20 min after mixing (common practice, no source)', () => {
		const [coat] = makePlan(detailInputs()).coats;
		const afterMixS = (coat?.brushBackS ?? 0) + (coat?.mixS ?? 0);
		expect(afterMixS).toBeGreaterThan(10 * 60);
		expect(afterMixS).toBeLessThan(30 * 60);
	});

	test('a material that stays up only a little gets more coats; too few asked for are warned of', () => {
		const { materials } = testInputs();
		const weak = { ...materials, build: { ...testSheet('brush-80'), yieldStressPa: 25 } };
		const plan = makePlan(testInputs({ materials: weak }));
		const limitMm = (1000 * 25) / (1152 * 9.80665);
		expect(Math.max(...plan.coats.map(({ thicknessMm }) => thicknessMm))).toBeLessThanOrEqual(
			limitMm + 0.1
		);
		expect(plan.coats.length).toBeGreaterThan(4);
		expect(codes(makePlan(testInputs({ materials: weak, buildCoats: 2 })))).toContain('sag');
	});
});

describe('times follow the room', () => {
	test('ten degrees warmer halves the waits, ten cooler doubles them (Q10 = 2, textbook rule)', () => {
		const coat = (roomTemperatureC: number) => makePlan(testInputs({ roomTemperatureC })).coats[0];
		expect(coat(23)?.tackTestS).toBe(2700);
		expect(coat(33)?.tackTestS).toBe(23 * 60);
		expect(coat(13)?.tackTestS).toBe(5400);
		expect(coat(33)?.windowClosesS).toBe(7200);
	});

	test('two times of the data sheet win over the rule', () => {
		const { materials } = testInputs();
		const tackFree = { timeS: 2700, atC: 23, second: { timeS: 1500, atC: 30 } };
		const build = { ...testSheet('brush-80'), tackFree };
		const plan = makePlan(testInputs({ materials: { ...materials, build }, roomTemperatureC: 30 }));
		expect(plan.coats[0]?.tackTestS).toBe(1500);
		expect(plan.figures['coats.0.tackTestS']?.law.id).toBe('arrhenius');
	});

	test('a room outside the data sheet is warned of; damp air stops a urethane, not a silicone', () => {
		expect(codes(makePlan(testInputs({ roomTemperatureC: 12 })))).toContain('room-temperature');
		expect(codes(makePlan(testInputs({ roomHumidityPct: 85 })), 'refuse')).toContain('moisture');
		const { materials } = testInputs();
		const silicone = {
			...materials,
			build: testSheet('brush-platinum'),
			shell: testSheet('shell-polyester'),
			reinforcement: testSheet('mat-450')
		};
		expect(codes(makePlan(testInputs({ materials: silicone, roomHumidityPct: 85 })))).not.toContain(
			'moisture'
		);
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
		expect(plan.coats[0]?.tackTestS).toBe(45 * 60);
		expect(plan.figures['coats.0.tackTestS']?.inputs[0]?.origin).toBe('default');
		expect(codes(plan).filter((code) => code === 'sheet-gap')).toHaveLength(2);
		expect(codes(makePlan(testInputs()))).not.toContain('sheet-gap');
	});
});

describe('shell', () => {
	test('pressure is ρ g h (hydrostatics)', () => {
		expect(makePlan(testInputs()).pour.pressurePa).toBeCloseTo(1574 * 9.80665 * 0.3, 6);
	});

	test('a low pattern gets the least that is laid by hand, a tall one more; too thin is warned of', () => {
		const inputs = testInputs();
		const sized = (mm: number) =>
			makePlan({
				...inputs,
				pattern: {
					...inputs.pattern,
					body: {
						kind: 'solids',
						solids: [
							{
								shape: 'cylinder',
								id: 'c',
								name: 'C',
								on: 'board',
								against: [],
								diameterMm: mm,
								heightMm: mm
							}
						]
					}
				}
			});
		expect(sized(80).shell.thicknessMm).toBe(10);
		expect(sized(350).shell.thicknessMm).toBeGreaterThan(12);
		expect(codes(sized(700))).toContain('shell-ribs');
		expect(codes(makePlan(testInputs({ shellThicknessMm: 3 })))).toContain('shell-ribs');
	});

	test('a gap that does not hold glove and shell is refused', () => {
		expect(codes(makePlan(testInputs({ frameGapMm: 12 })), 'refuse')).toContain('gap-narrow');
	});

	test('a laminate takes cloth, a third of its weight', () => {
		const { materials } = testInputs();
		const laminate = {
			...materials,
			build: testSheet('brush-platinum'),
			shell: testSheet('shell-polyester'),
			reinforcement: testSheet('mat-450')
		};
		const plan = makePlan(testInputs({ materials: laminate }));
		const clothG = plan.shell.rounds.reduce((sum, round) => sum + round.reinforcementG, 0);
		expect(clothG / plan.weights.shellG).toBeCloseTo(0.3, 9);
		expect(plan.order.some(({ materialId }) => materialId === 'mat-450')).toBe(true);
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
