import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/lib/core/materials/sheet';
import { workableS } from '../../src/lib/core/laws/mass-effect';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { curingMaterial } from '../../src/lib/core/plan/curing-material';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
import { testInputs, testSheet, testShop } from '../fixtures/materials';

/** An invented rigid urethane for casting: four minutes in 200 g at the test shop's temperature. */
const fast: Sheet = {
	...testSheet('paste-9'),
	id: 'casting-fast',
	name: 'Test casting urethane, fast',
	kind: 'casting',
	body: 'liquid',
	potLife: { timeS: 240, massG: 200, atC: 23 },
	mixS: 45,
	demold: { timeS: 1800, atC: 23 }
};
const planOf = (casting: Sheet, over: Parameters<typeof testInputs>[0] = {}): Plan => {
	const inputs = testInputs({ people: 1, ...over });
	return makePlan({ ...inputs, materials: { ...inputs.materials, casting } });
};
const said = (plan: Plan, code: string) => plan.warnings.filter((warning) => warning.code === code);
const lengthS = ({ calendar }: Plan, id: string): number => {
	const entry = calendar.find((each) => each.id === id);
	return (Date.parse(entry?.endAt ?? '') - Date.parse(entry?.startAt ?? '')) / 1000;
};

describe('a first pour of a fast casting material', () => {
	const plan = planOf(fast);
	const batches = plan.pour.batches!;

	test('is planned in batches that one person mixes and pours before they turn', () => {
		const { material } = curingMaterial(fast)!;
		// 1 K warmer than the thermometer says, and three times as fast over ten: common practice, no source.
		const turnsS = 3 ** -0.1 * workableS(material, { kind: 'cup', massG: batches.massG }, 23);
		// 1.5 kg a minute, and a tenth of the pot life to spare: common practice, no source.
		expect(batches.mixS! + (60 * batches.massG) / 1500).toBeLessThanOrEqual(0.9 * turnsS);
		expect(batches.count).toBe(Math.ceil(plan.pour.massG / batches.largestG));
		expect(batches.count).toBeGreaterThan(1);
		expect(batches.workingS).toBe(Math.floor(turnsS - 45));
		// A batch of kilograms turns sooner than the 200 g of the sheet.
		expect(batches.workingS).toBeLessThan(240 - 45);
	});

	test('has parts that sum to the batch, and batches that sum to the pour', () => {
		const sum = batches.parts.reduce((total, { massG }) => total + massG, 0);
		expect(sum).toBeCloseTo(batches.massG, 6);
		expect(batches.count * batches.massG).toBeCloseTo(plan.pour.massG, 6);
		plan.pour.parts.forEach(({ massG }, i) =>
			expect(massG).toBeCloseTo(batches.count * (batches.parts[i]?.massG ?? 0), 6)
		);
	});

	test('is said not to go at once, with the ways out', () => {
		const [warning] = said(plan, 'pour-time');
		expect(warning?.severity).toBe('warn');
		expect(warning?.text).toMatch(/cannot be mixed and poured by one person within \d/);
		expect(warning?.text).toContain('Choose a slower casting material');
	});

	test('takes its time in the calendar', () => {
		const slow = planOf(testSheet('casting-plaster'));
		expect(lengthS(plan, 'pour')).toBeGreaterThanOrEqual(lengthS(slow, 'pour') + batches.spanS);
		const four = planOf(fast, { people: 4 });
		expect(lengthS(four, 'pour')).toBeLessThan(lengthS(plan, 'pour'));
	});

	test('heats itself in the mold and in the bucket, which is a hazard with its briefing', () => {
		const cool = planOf({ ...fast, hazards: ['isocyanate'], hazardStatements: [] });
		const heat = cool.cure?.casting;
		// All of 150 J/g at 1.7 J/(g·K) is 88 K: no more can come of it.
		expect(heat?.peakC).toBeGreaterThan(80);
		expect(heat?.peakC).toBeLessThan(23 + 150 / 1.7);
		expect(heat?.batchPeakC).toBeLessThan(23 + 150 / 1.7);
		expect(said(cool, 'hot-casting')[0]?.text).toContain('in the mold');
		expect(cool.hazards).toContain('hot-cup');
		expect(cool.briefings).toContain('exotherm-and-waste');
	});

	test('is a plan as it is kept', () => {
		expect(planSchema.parse(plan)).toEqual(plan);
	});
});

describe('a first pour that cannot be', () => {
	test('is refused when mixing takes the pot life', () => {
		const plan = planOf({ ...fast, potLife: { timeS: 60, massG: 200, atC: 23 }, mixS: 90 });
		expect(said(plan, 'pour-time')[0]).toMatchObject({ severity: 'refuse' });
		expect(plan.pour.batches).toBeUndefined();
	});

	test('is refused when it would set long before the last batch is in', () => {
		const plan = planOf({ ...fast, potLife: { timeS: 75, massG: 200, atC: 23 } });
		expect(said(plan, 'pour-time')[0]).toMatchObject({ severity: 'refuse' });
		expect(said(plan, 'pour-time')[0]?.text).toContain('batches');
	});
});

test('a casting without a pot life is asked for it, and has no batches', () => {
	const plan = planOf({ ...fast, potLife: undefined });
	expect(said(plan, 'pour-time')[0]?.text).toContain('gives no pot life');
	expect(plan.pour.batches).toBeUndefined();
	expect(plan.cure?.casting).toBeUndefined();
});

test('a slow casting that fits one bucket says nothing, and when it must be in', () => {
	const slow = { ...fast, potLife: { timeS: 3600, massG: 5000, atC: 23 } };
	const plan = planOf(slow, { shop: { ...testShop, roomSpreadK: 1 } });
	expect(plan.pour.batches?.count).toBe(1);
	expect(said(plan, 'pour-time')).toEqual([]);
	const { low = 0, high = 0 } = plan.figures['pour.batches.workingS'] ?? {};
	// What must end in time is counted from the short end.
	expect(low).toBe(plan.pour.batches?.workingS);
	expect(high).toBeGreaterThan(plan.pour.batches?.workingS ?? 0);
});
