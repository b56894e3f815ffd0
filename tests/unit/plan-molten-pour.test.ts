import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/lib/core/materials/sheet';
import type { PlanInputs } from '../../src/lib/core/plan/inputs';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
import { testInputs, testSheet } from '../fixtures/materials';

const HOUR = 3600;
/** An invented wax whose data sheet says little: nothing of how hot it is melted or poured. */
const wax: Sheet = {
	...testSheet('casting-plaster'),
	id: 'casting-wax',
	name: 'Test casting wax',
	family: 'casting wax',
	body: 'liquid',
	parts: [{ part: 'wax', densityGPerMl: 0.9 }],
	ratioByWeight: undefined,
	ratioByVolume: undefined,
	potLife: undefined,
	mixedDensityGPerMl: 0.9,
	demold: { timeS: 45 * 60, atC: 22 },
	hazards: ['hot-cup']
};

function planOf(sideMm: number, over: Partial<Sheet> = {}, glove: Partial<Sheet> = {}): Plan {
	const base: PlanInputs = testInputs({ people: 2 });
	return makePlan({
		...base,
		pattern: {
			...base.pattern,
			body: {
				kind: 'solids',
				solids: [
					{
						shape: 'box',
						id: 'block',
						name: 'Block',
						on: 'board',
						against: [],
						lengthMm: sideMm,
						widthMm: sideMm,
						heightMm: sideMm
					}
				]
			}
		},
		materials: {
			...base.materials,
			build: { ...base.materials.build, ...glove },
			casting: { ...wax, ...over }
		}
	});
}
const said = ({ warnings }: Plan, code: string) => warnings.filter((each) => each.code === code);
const lengthS = ({ calendar }: Plan, id: string): number => {
	const entry = calendar.find((each) => each.id === id);
	return (Date.parse(entry?.endAt ?? '') - Date.parse(entry?.startAt ?? '')) / 1000;
};

describe('a first pour of wax', () => {
	const large = planOf(323);
	const small = planOf(60);

	test('says how people burn by it, and what keeps them from it', () => {
		const [warning] = said(large, 'hot-wax');
		for (const word of [
			'water bath',
			'thermostat',
			'never over an open flame',
			'none on burning wax',
			'lid',
			'extinguisher',
			'Its data sheet gives no temperature'
		]) {
			expect(warning?.text).toContain(word);
		}
		expect(said(small, 'hot-wax')).toHaveLength(1);
		expect(said(makePlan(testInputs()), 'hot-wax')).toEqual([]);
	});

	test('waits for a supervisor where it is more than one person carries', () => {
		expect(large.pour.massG).toBeGreaterThan(15_000);
		expect(said(large, 'hot-wax')[0]?.severity).toBe('decide');
		expect(said(small, 'hot-wax')[0]?.severity).toBe('warn');
	});

	test('is carried in pails that one person lifts, without a time to mix', () => {
		const batches = large.pour.batches!;
		expect(batches.count).toBe(Math.ceil(large.pour.massG / 15_000));
		expect(batches.count).toBeGreaterThan(1);
		expect(batches.massG).toBeLessThanOrEqual(15_000);
		expect(batches.workingS).toBeUndefined();
		expect(batches.mixS).toBeUndefined();
		expect(said(large, 'hot-wax')[0]?.text).toContain(`Carry it in ${batches.count} pails`);
	});

	test('is melted before, with somebody beside it', () => {
		// 30 kg by 190 J/g and by some 100 J/g of warming, at a kilowatt: over two hours.
		expect(lengthS(large, 'pour-melt')).toBeGreaterThan(2 * HOUR);
		expect(lengthS(small, 'pour-melt')).toBeLessThan(HOUR);
		expect(large.calendar.find(({ id }) => id === 'pour-melt')?.kind).toBe('work');
	});

	test('sets as long as its size asks for, not as its sheet says of a thin one', () => {
		expect(lengthS(small, 'pour-wait')).toBeGreaterThan(45 * 60);
		// A cube of 323 mm holds 30 kg of wax that gives off 200 J/g over 0.6 m² of its own insulation: days.
		expect(lengthS(large, 'pour-wait')).toBeGreaterThan(48 * HOUR);
		expect(lengthS(large, 'pour-wait')).toBeLessThan(10 * 24 * HOUR);
		// Between a resistance outside, which grows with the side, and one inside, with its square.
		const grows = large.pour.melt!.solidS / small.pour.melt!.solidS;
		expect(grows).toBeGreaterThan(323 / 60);
		expect(grows).toBeLessThan((323 / 60) ** 2);
	});

	test('is held against what the glove stands, or says that nobody wrote it down', () => {
		const poured = { meltsAtC: 57, poursAtC: 68 };
		expect(said(planOf(60, poured, { heatLimitC: 60 }), 'wax-too-hot')[0]?.severity).toBe('decide');
		const stands = planOf(60, poured, { heatLimitC: 70 });
		expect(said(stands, 'wax-too-hot')).toEqual([]);
		expect(said(stands, 'wax-heat-unknown')).toEqual([]);
		expect(said(planOf(60), 'wax-heat-unknown')[0]?.text).toMatch(/do not say .* nor .*: ask/);
	});

	test('keeps to the schema of a plan', () => {
		expect(planSchema.safeParse(large).error).toBeUndefined();
	});
});

describe('water and powder', () => {
	const inputs = testInputs();

	test.each(['plaster', 'concrete'] as const)('%s goes into the water, not under it', (family) => {
		const casting: Sheet = {
			...testSheet('casting-plaster'),
			family,
			parts: [{ part: 'Powder' }, { part: 'Water' }],
			ratioByWeight: [100, 70],
			ratioByVolume: undefined
		};
		const plan = makePlan({ ...inputs, materials: { ...inputs.materials, casting } });
		// Water first, then the powder sifted into it: common practice, no source.
		expect(plan.pour.parts.map(({ part }) => part)).toEqual(['Water', 'Powder']);
		expect(plan.pour.batches?.parts.map(({ part }) => part) ?? ['Water', 'Powder']).toEqual([
			'Water',
			'Powder'
		]);
		const [water, powder] = plan.pour.parts;
		expect((water?.massG ?? 0) / (powder?.massG ?? 1)).toBeCloseTo(0.7, 2);
	});
});
