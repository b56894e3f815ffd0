import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Solid } from '../../src/lib/core/geometry/pattern';
import type { PlanInputs } from '../../src/lib/core/plan/inputs';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { PlanError } from '../../src/lib/core/plan/plan-error';
import { planSchema } from '../../src/lib/core/plan/plan';
import { detailInputs, testInputs, testSheet, testShop } from '../fixtures/materials';

const problemsOf = (inputs: unknown) => {
	try {
		makePlan(inputs as PlanInputs);
		return [];
	} catch (error) {
		if (error instanceof PlanError) return error.problems;
		throw error;
	}
};

const size = fc.double({ min: 20, max: 600, noNaN: true });
const solids = fc
	.array(fc.record({ a: size, b: size, c: size, on: fc.nat(4), shape: fc.nat(4) }), {
		minLength: 1,
		maxLength: 6
	})
	.map((drafts) =>
		drafts.map(({ a, b, c, on, shape }, index): Solid => {
			const standing = {
				id: `s${index}`,
				name: `Solid ${index}`,
				on: on < index ? `s${on}` : 'board',
				against: []
			};
			const shapes: Solid[] = [
				{ shape: 'box', ...standing, lengthMm: a, widthMm: b, heightMm: c },
				{ shape: 'cylinder', ...standing, diameterMm: a, heightMm: c },
				{ shape: 'frustum', ...standing, bottomDiameterMm: a, topDiameterMm: b, heightMm: c },
				{ shape: 'dome', ...standing, diameterMm: a, heightMm: c },
				{ shape: 'ring', ...standing, outerDiameterMm: a, innerDiameterMm: a / 2, heightMm: c }
			];
			return shapes[shape] ?? shapes[0]!;
		})
	);

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const inputs = fc
	.record({
		solids,
		build: fc.constantFrom('brush-80', 'brush-11', 'brush-platinum', 'brush-tin'),
		shell: fc.constantFrom('paste-9', 'shell-polyester'),
		casting: fc.constantFrom('casting-plaster', 'casting-polyester'),
		hasDetail: fc.boolean(),
		hasCloth: fc.boolean(),
		gloveThicknessMm: maybe(fc.double({ min: 2.5, max: 20, noNaN: true })),
		buildCoats: maybe(fc.integer({ min: 2, max: 12 })),
		shellThicknessMm: maybe(fc.double({ min: 3, max: 40, noNaN: true })),
		frameGapMm: maybe(fc.double({ min: 10, max: 100, noNaN: true })),
		roomTemperatureC: maybe(fc.double({ min: 12, max: 32, noNaN: true })),
		roomHumidityPct: maybe(fc.double({ min: 1, max: 100, noNaN: true })),
		undercutMm: fc.double({ min: 0, max: 40, noNaN: true }),
		people: fc.integer({ min: 1, max: 8 }),
		scaleReadabilityG: fc.constantFrom(0.1, 0.5, 1, 2),
		startDay: fc.integer({ min: 0, max: 400 })
	})
	.map((draft): PlanInputs => {
		const base = draft.hasDetail ? detailInputs() : testInputs();
		const { gloveThicknessMm, buildCoats, shellThicknessMm, frameGapMm } = draft;
		const asked = { gloveThicknessMm, buildCoats, shellThicknessMm, frameGapMm };
		const room = {
			roomTemperatureC: draft.roomTemperatureC,
			roomHumidityPct: draft.roomHumidityPct
		};
		const given = Object.entries({ ...asked, ...room }).filter(([, value]) => value !== undefined);
		return {
			...base,
			...Object.fromEntries(given),
			shop: { ...testShop, scaleReadabilityG: draft.scaleReadabilityG },
			pattern: {
				...base.pattern,
				undercutMm: draft.undercutMm,
				body: { kind: 'solids', solids: draft.solids }
			},
			materials: {
				...base.materials,
				build: testSheet(draft.build),
				shell: testSheet(draft.shell),
				casting: testSheet(draft.casting),
				...(draft.hasCloth ? { reinforcement: testSheet('mat-450') } : {})
			},
			people: draft.people,
			startAt: new Date(
				Date.parse('2026-01-01T09:00:00Z') + draft.startDay * 86_400_000
			).toISOString()
		};
	});

describe('plans over random valid inputs', () => {
	test('a plan, or a reason in words: never NaN, never negative, cups add up, fractions are whole', () => {
		let made = 0;
		fc.assert(
			fc.property(inputs, (given) => {
				const problems = problemsOf(given);
				if (problems.length > 0) {
					for (const { message } of problems) expect(message.length).toBeGreaterThan(20);
					return;
				}
				made += 1;
				const plan = makePlan(given);
				// The schema's numbers are finite, and those that can't be negative are not.
				expect(planSchema.safeParse(plan).error).toBeUndefined();
				for (const batch of [...plan.coats, ...plan.shell.rounds]) {
					const fractions = batch.fractions.reduce((sum, { fraction }) => sum + fraction, 0);
					expect(fractions).toBeCloseTo(1, 12);
					const cups = batch.cups.reduce((sum, { massG }) => sum + massG, 0);
					expect(cups).toBeCloseTo(batch.massG, 4);
					expect(Math.max(...batch.cups.map(({ massG }) => massG))).toBeLessThanOrEqual(
						batch.largestCupG + 1e-6
					);
				}
				for (const line of plan.order) expect(line.boughtG).toBeGreaterThanOrEqual(line.needG);
				for (let i = 1; i < plan.calendar.length; i += 1) {
					expect(plan.calendar[i]!.startAt >= plan.calendar[i - 1]!.endAt).toBe(true);
				}
			}),
			{ numRuns: 60 }
		);
		expect(made).toBeGreaterThan(20);
	});

	test('the order of the solids does not change what is mixed', () => {
		fc.assert(
			fc.property(solids, (pile) => {
				const of = (list: Solid[]) => {
					const base = testInputs();
					return problemsOf({
						...base,
						pattern: { ...base.pattern, body: { kind: 'solids', solids: list } }
					}).length > 0
						? null
						: makePlan({
								...base,
								pattern: { ...base.pattern, body: { kind: 'solids', solids: list } }
							});
				};
				const [one, other] = [of(pile), of(pile.toReversed())];
				if (!one || !other) return expect(one).toEqual(other);
				// Notes name a solid by its place in the list, which is all that may differ.
				expect({ ...other, inputs: one.inputs, warnings: one.warnings }).toEqual(one);
			}),
			{ numRuns: 15 }
		);
	});
});

describe('inputs that no plan can be computed from', () => {
	const base = testInputs();
	const build = testSheet('brush-80');
	const withBuild = (over: object) => ({
		...base,
		materials: { ...base.materials, build: { ...build, ...over } }
	});
	const withSolid = (over: object) => ({
		...base,
		pattern: {
			...base.pattern,
			body: {
				kind: 'solids',
				solids: [
					{
						shape: 'box',
						id: 'a',
						name: 'A',
						on: 'board',
						lengthMm: 100,
						widthMm: 100,
						heightMm: 100,
						...over
					}
				]
			}
		}
	});

	test.each<[string, unknown, string]>([
		...[-1, 0, NaN, Infinity, 1e308, '', null, '12'].map((heightMm): [string, unknown, string] => [
			`a height of ${heightMm}`,
			withSolid({ heightMm }),
			'pattern.body.solids.0.heightMm'
		]),
		['a solid on nothing', withSolid({ on: 'ghost' }), 'pattern.body.solids.0.on'],
		['a blank name', { ...base, pattern: { ...base.pattern, name: '   ' } }, 'pattern.name'],
		[
			'a name of 10,000 characters',
			{ ...base, pattern: { ...base.pattern, name: 'x'.repeat(10_000) } },
			'pattern.name'
		],
		[
			'no parts wanted',
			{ ...base, pattern: { ...base.pattern, partsWanted: 0 } },
			'pattern.partsWanted'
		],
		['a start that is no instant', { ...base, startAt: 'tomorrow' }, 'startAt'],
		['nobody at work', { ...base, people: 0 }, 'people'],
		['a negative thickness', { ...base, gloveThicknessMm: -4 }, 'gloveThicknessMm'],
		[
			'a shell as glove',
			{ ...base, materials: { ...base.materials, build: testSheet('paste-9') } },
			'materials.build.kind'
		],
		['no pot life', withBuild({ potLife: undefined }), 'materials.build.potLife'],
		[
			'no ratio',
			withBuild({ ratioByWeight: undefined, ratioByVolume: undefined }),
			'materials.build.ratioByWeight'
		],
		[
			'a pot life shorter than the mixing',
			withBuild({ potLife: { timeS: 100, massG: 450, atC: 23 } }),
			'materials.build.potLife'
		],
		[
			'a warmer time that is longer',
			withBuild({ tackFree: { timeS: 600, atC: 20, second: { timeS: 900, atC: 30 } } }),
			'materials.build.tackFree.second'
		],
		[
			'a scale too coarse for the ratio',
			{ ...base, shop: { ...testShop, scaleReadabilityG: 50, cupVolumesMl: [250] } },
			'shop.scaleReadabilityG'
		],
		['nothing at all', null, ''],
		['an unknown field', { ...base, surprise: 1 }, '']
	])('%s is refused at its field, in words', (_what, wrong, path) => {
		const problems = problemsOf(wrong);
		expect(problems.map((problem) => problem.path)).toContain(path);
		for (const { message } of problems) expect(message).not.toMatch(/undefined|\[object/);
	});
});

test('thirty solids in twelve coats, begun outside the shift, make a whole plan', () => {
	const solidsOf = (count: number): Solid[] =>
		Array.from({ length: count }, (_, i): Solid => ({
			shape: i % 2 ? 'cylinder' : 'dome',
			id: `s${i}`,
			name: `S${i}`,
			on: 'board',
			against: [],
			diameterMm: 60,
			heightMm: 30
		}));
	const base = detailInputs({ buildCoats: 10, gloveThicknessMm: 12 });
	const given = {
		...base,
		pattern: { ...base.pattern, body: { kind: 'solids' as const, solids: solidsOf(30) } }
	};
	const plan = makePlan(given);
	expect(plan.coats.length).toBe(12);
	expect(plan.calendar.some(({ outsideShift }) => outsideShift)).toBe(true);
});
