import { expect, test } from 'vitest';
import type { Solid } from '../../src/lib/core/geometry/pattern';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { testInputs, testShop } from '../fixtures/materials';

test('a glove thicker than the pattern is said to be', () => {
	const base = testInputs();
	const box: Solid = {
		shape: 'box',
		id: 'block',
		name: 'Block',
		on: 'board',
		against: [],
		lengthMm: 53,
		widthMm: 36,
		heightMm: 15
	};
	const of = (gloveThicknessMm: number) =>
		makePlan({
			...base,
			gloveThicknessMm,
			pattern: { ...base.pattern, body: { kind: 'solids', solids: [box] } }
		}).warnings.filter(({ code }) => code === 'glove-too-thick');
	expect(of(25)[0]?.text).toContain('25 mm');
	expect(of(10)).toEqual([]);
});

test('a cure that was counted through cold nights says so', () => {
	const warm = makePlan(testInputs());
	const cold = makePlan(testInputs({ shop: { ...testShop, nightTemperatureC: 10 } }));
	expect(cold.gloveCure.testS).toBeGreaterThan(warm.gloveCure.testS);
	expect(cold.gloveCure.why).toContain('nights of 10 °C');
	expect(cold.shellCure.why).toContain('nights of 10 °C');
	expect(warm.gloveCure.why).not.toContain('nights of');
});
