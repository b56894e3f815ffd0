import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { type Plan } from '../../src/lib/core/plan/plan';
import { roomTime } from '../../src/lib/core/plan/room-time';
import { testInputs, testSheet, testShop } from '../fixtures/materials';

const codes = (plan: Plan, severity?: string) =>
	plan.warnings.filter((w) => !severity || w.severity === severity).map(({ code }) => code);

describe('times follow the room', () => {
	// 1 K of a thermometer and a speed of 1.5 to 3 times over ten kelvin: common practice, no source.
	test.each([
		{ roomC: 23, testS: 2700 * 3 ** 0.1, closesS: 14_400 * 3 ** -0.1 },
		{ roomC: 33, testS: 2700 * 1.5 ** -0.9, closesS: 14_400 * 3 ** -1.1 },
		{ roomC: 13, testS: 2700 * 3 ** 1.1, closesS: 14_400 * 1.5 ** 0.9 }
	])(
		'at $roomC °C a coat is tested when it is likely ready at the latest, and its window shuts when it may at the soonest',
		({ roomC, testS, closesS }) => {
			const [coat] = makePlan(testInputs({ roomTemperatureC: roomC })).coats;
			expect(coat?.tackTestS).toBe(60 * Math.ceil(testS / 60));
			expect(coat?.windowClosesS).toBe(60 * Math.floor(closesS / 60));
		}
	);

	test('where thermometer and rule leave nothing open, ten degrees halve and double (Q10 = 2, textbook rule)', () => {
		const timeS = (temperatureC: number) =>
			roomTime({
				label: 'almost tack-free',
				sheet: { timeS: 2700, atC: 23 },
				fallback: 'tackFreeS',
				temperatureC,
				safe: 'exact'
			}).timeS;
		expect(timeS(33)).toBeCloseTo(1350, 9);
		expect(timeS(13)).toBeCloseTo(5400, 9);
	});

	test('two times of the data sheet win over the rule', () => {
		const { materials } = testInputs();
		const tackFree = { timeS: 2700, atC: 23, second: { timeS: 1500, atC: 30 } };
		const build = { ...testSheet('brush-80'), tackFree };
		const shop = { ...testShop, roomSpreadK: 0 };
		const plan = makePlan(
			testInputs({ materials: { ...materials, build }, roomTemperatureC: 30, shop })
		);
		expect(plan.coats[0]?.tackTestS).toBe(1500);
		const inputs = plan.figures['coats.0.tackTestS']?.inputs.map(({ symbol }) => symbol);
		expect(inputs).toContain('E_a');
		expect(inputs).not.toContain('Q10');
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
