import { describe, expect, test } from 'vitest';
import { eightHourPpm } from '../../src/lib/core/laws/exposure-dose';
import type { PlanInputs } from '../../src/lib/core/plan/inputs';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
import { testInputs, testSheet, testShop } from '../fixtures/materials';

const base = testInputs();
const withPolyester = (shop: Partial<PlanInputs['shop']> = {}) =>
	makePlan(
		testInputs({
			shop: { ...testShop, ...shop },
			materials: { ...base.materials, shell: testSheet('shell-polyester') }
		})
	);
const indexOf = (plan: Plan, id: string): number =>
	plan.air?.steps.findIndex(({ substanceId }) => substanceId === id) ?? -1;

describe('the average over eight hours', () => {
	test('counts the hours after the work: about 367 ppm after a peak of 530, not 36', () => {
		// 66 min of work, then 6.9 h in which Q′ = 6 m³/h clears 60 m³: 530 · (1 − e^(−0.69)) / 0.1 / 8 = 330.
		const perH = 6 / 60;
		const steadyPpm = 530 / (1 - Math.exp(-perH * 1.1));
		const average = eightHourPpm({
			effectiveM3PerH: 6,
			roomM3: 60,
			vaporM3PerH: 6 * steadyPpm * 1e-6,
			releaseS: 1.1 * 3600,
			sensitizer: false
		});
		expect(average).toBeGreaterThan(362);
		expect(average).toBeLessThan(372);
	});

	test('air that would overcome somebody is for a supervisor to decide', () => {
		const dangerOf = (plan: Plan) => plan.warnings.find(({ code }) => code === 'air-danger');
		const styreneOf = (plan: Plan) => plan.air?.steps[indexOf(plan, 'styrene')]?.peakPpm ?? 0;
		const closet = withPolyester({ roomVolumeM3: 20, measuredFanM3PerH: 1 });
		// 700 ppm: NIOSH, documentation of IDLH concentrations, styrene, May 1994.
		expect(styreneOf(closet)).toBeGreaterThan(700);
		expect(dangerOf(closet)?.severity).toBe('decide');
		expect(dangerOf(closet)?.text).toContain('700 ppm');
		const hall = withPolyester({ roomVolumeM3: 2000, measuredFanM3PerH: 4000 });
		expect(styreneOf(hall)).toBeLessThan(700 / 3);
		expect(dangerOf(hall)).toBeUndefined();
	});

	test('of a step is far above that of its work alone when no fan runs', () => {
		const plan = withPolyester();
		const step = plan.air?.steps[indexOf(plan, 'styrene')];
		const workS = (step?.overS ?? 0) * (step?.times ?? 0);
		const alone = ((step?.peakPpm ?? 0) * workS) / 28_800;
		expect(workS).toBeLessThan(3 * 3600);
		expect(step?.shiftAveragePpm).toBeGreaterThan(1.5 * alone);
	});

	test('adds the steps of one substance that the calendar puts into one shift', () => {
		const solvent = [{ substance: 'stoddard solvent' as const, fraction: 0.5 }];
		const film = { ...testSheet('film-pva'), volatiles: solvent };
		const wax = { ...testSheet('paste-wax'), volatiles: solvent };
		const plan = makePlan(testInputs({ materials: { ...base.materials, film, wax } }));
		const shift = plan.air?.shifts?.find(({ substanceId }) => substanceId === 'stoddard solvent');
		const inShift = shift?.steps.map((i) => plan.air?.steps[i]?.title);
		expect(inShift).toEqual(expect.arrayContaining(['Wax', 'Parting film']));
		for (const i of shift?.steps ?? []) {
			expect(shift?.averagePpm).toBeGreaterThan(0.9 * (plan.air?.steps[i]?.shiftAveragePpm ?? 0));
		}
		const figure = plan.figures['air.shifts.0.averagePpm'];
		expect(figure?.inputs.filter(({ symbol }) => symbol.startsWith('ṁ')).length).toBe(
			plan.air?.shifts?.[0]?.steps.length
		);
		expect(planSchema.safeParse(plan).success).toBe(true);
	});

	test('is in the warning', () => {
		const warning = withPolyester().warnings.find(
			({ code, text }) => code === 'air-limit' && text.startsWith('Styrene')
		);
		expect(warning?.text).toMatch(/over the worst eight hours of the calendar, [\d,.]+ ppm/);
	});
});

describe('what is assumed of the air', () => {
	test('carries a stated range into every level, and none once it is measured', () => {
		const assumed = withPolyester().figures;
		const measured = withPolyester({ measuredFanM3PerH: 900, mixingFactor: 4 }).figures;
		expect(assumed['air.flowM3PerH']).toMatchObject({ low: 12, high: 60 });
		expect(measured['air.flowM3PerH']?.low).toBeUndefined();
		const width = (figures: Plan['figures']) => {
			const { low = 1, high = 1 } = figures['air.halfLifeS'] ?? {};
			return high / low;
		};
		// 0.2 to 1 changes an hour, mixing factor 3 to 10.
		expect(width(assumed)).toBeCloseTo((1 / 0.2) * (10 / 3), 6);
		expect(width(measured)).toBe(1);
	});

	test('the release of an isocyanate is given within the factor of two of its law', () => {
		const plan = makePlan(base);
		const {
			low = 0,
			high = 0,
			value = 1
		} = plan.figures[`air.steps.${indexOf(plan, 'mdi')}.releaseGPerMin`] ?? {};
		expect(value / low).toBeGreaterThanOrEqual(2);
		expect(high / value).toBeGreaterThanOrEqual(2);
	});

	test('a level whose upper end alone is above its limit is warned of, with both numbers', () => {
		// A limit between the likely level and its upper end: found by the fan that puts it there.
		const found = [200, 400, 800, 1600, 3200, 6400, 12_800, 20_000, 30_000].map(
			(measuredFanM3PerH) => {
				const plan = withPolyester({ measuredFanM3PerH });
				const i = indexOf(plan, 'styrene');
				const step = plan.air?.steps[i];
				const high = plan.figures[`air.steps.${i}.peakPpm`]?.high ?? 0;
				const limit = step?.limit?.ppm ?? 0;
				const text = plan.warnings.find(
					(each) => each.code === 'air-limit' && each.text.startsWith('Styrene')
				)?.text;
				return { isBetween: (step?.peakPpm ?? 0) < limit && high > limit, text };
			}
		);
		const between = found.filter(({ isBetween }) => isBetween);
		expect(between.length).toBeGreaterThan(0);
		for (const { text } of between) expect(text).toMatch(/ppm \(likely [\d.,]+\)/);
	});
});

test('vapor is counted over the shortest time in which a thing may dry, not over the wait for it', () => {
	const plan = makePlan(testInputs());
	const haze = plan.figures['release.waxHazeS'];
	const overS = Object.values(plan.figures)
		.filter(({ label }) => label.includes('paste wax: release'))
		.flatMap(({ inputs }) => inputs)
		.find(({ label }) => label === 'dries or cures within')?.value;
	expect(haze?.low).toBeLessThan(haze?.value ?? 0);
	expect(overS).toBe(haze?.low);
});
