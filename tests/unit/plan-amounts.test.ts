import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { type Plan } from '../../src/lib/core/plan/plan';
import { detailInputs, testInputs, testSheet, testShop } from '../fixtures/materials';

const codes = (plan: Plan, severity?: string) =>
	plan.warnings.filter((w) => !severity || w.severity === severity).map(({ code }) => code);

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

	test('a paste with 9 minutes: no cup is more than one person lays in what is likely left of them after mixing', () => {
		// 1 K warmer than the thermometer says, and three times as fast over ten: common practice, no source.
		const layS = Math.floor(540 * 3 ** -0.1 - 90);
		for (const pastingGPerMin of [20, 45, 60, 400]) {
			const plan = makePlan(testInputs({ shop: { ...testShop, pastingGPerMin } }));
			for (const round of plan.shell.rounds) {
				expect(round.workingS).toBe(layS);
				for (const cup of round.cups) {
					expect(cup.massG).toBeLessThanOrEqual((pastingGPerMin * (layS + 1)) / 60);
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
