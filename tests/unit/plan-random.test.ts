import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Solid } from '../../src/lib/core/geometry/pattern';
import { LIMIT_SETS } from '../../src/lib/core/laws/exposure-limits';
import type { PlanInputs } from '../../src/lib/core/plan/inputs';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { PlanError } from '../../src/lib/core/plan/plan-error';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
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

/** Anything between two ends, and often the ends themselves and what lies next to them. */
const upTo = (min: number, max: number) => {
	const next = (max - min) * 1e-9;
	return fc.oneof(
		{ weight: 2, arbitrary: fc.double({ min, max, noNaN: true }) },
		{ weight: 1, arbitrary: fc.constantFrom(min, min + next, max - next, max) }
	);
};
const usualSize = fc.double({ min: 20, max: 600, noNaN: true });
const solidsOf = (size: fc.Arbitrary<number>) =>
	fc
		.array(fc.record({ a: size, b: size, c: size, on: fc.nat(4), shape: fc.nat(5) }), {
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
					{ shape: 'ring', ...standing, outerDiameterMm: a, innerDiameterMm: a / 2, heightMm: c },
					{ shape: 'wedge', ...standing, lengthMm: a, widthMm: b, heightMm: c }
				];
				return shapes[shape] ?? shapes[0]!;
			})
		);
const solids = solidsOf(usualSize);
/** From the smallest to the largest that may be entered. */
const anySolids = solidsOf(
	fc.oneof(usualSize, fc.constantFrom(0.1, 0.100001, 1, 3000, 9999.999, 10_000))
);

const given = (draft: object) =>
	Object.fromEntries(Object.entries(draft).filter(([, value]) => value !== undefined));
const sometimes = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
/** What a shop may say of itself, each left out as often as not. */
const shops = fc.record({
	scaleReadabilityG: fc.constantFrom(0.001, 0.1, 0.5, 1, 2, 50),
	units: fc.constantFrom('SI', 'US'),
	laborPerHour: upTo(0, 10_000),
	brushingGPerMin: fc.oneof(fc.constant(90), upTo(1, 2000)),
	pastingGPerMin: fc.oneof(fc.constant(120), upTo(1, 5000)),
	cupVolumesMl: fc.constantFrom([250, 500, 1000, 2500], [5], [50_000], [250, 2500]),
	nightTemperatureC: sometimes(upTo(-10, 45)),
	roomSpreadK: sometimes(upTo(0, 10)),
	boardMm: sometimes(fc.constantFrom(6, 19.05, 60)),
	moldLifePours: sometimes(fc.constantFrom(1, 2, 50, 100_000)),
	benchTimes: sometimes(
		fc
			.record({ fixedS: upTo(0, 1e6), perM2S: upTo(0, 1e6), daysCount: upTo(0, 365) })
			.map((time) => ({ 'solid block': time, 'poured layer': time }))
	),
	roomVolumeM3: sometimes(upTo(1, 1e5)),
	measuredFanM3PerH: sometimes(upTo(0.01, 1e6)),
	fanGrille: sometimes(
		fc.record({
			meanMPerS: upTo(1e-6, 60),
			areaCm2: upTo(1, 1e6),
			freeFraction: upTo(0.1, 1)
		})
	),
	mixingFactor: sometimes(upTo(1, 10)),
	limitSets: sometimes(fc.subarray([...LIMIT_SETS], { minLength: 1 })),
	airSpeedMPerS: sometimes(upTo(0, 3))
});
const choices = fc.record({
	gloveThicknessMm: sometimes(upTo(1, 30)),
	buildCoats: sometimes(fc.constantFrom(2, 3, 7, 11, 12)),
	shellThicknessMm: sometimes(upTo(3, 80)),
	frameGapMm: sometimes(upTo(10, 300)),
	roomTemperatureC: sometimes(fc.oneof(upTo(5, 35), upTo(0, 45))),
	roomHumidityPct: sometimes(upTo(1, 100)),
	surfaceTemperatureC: sometimes(upTo(-20, 60)),
	lots: sometimes(
		fc
			.constantFrom('2025-01-01T00:00:00Z', '2026-01-01T09:00:00Z')
			.map((madeAt) => [{ materialId: 'brush-80', madeAt }])
	),
	additions: sometimes(
		fc
			.record({
				to: fc.constantFrom('detail', 'build', 'shell', 'casting'),
				partsPerHundred: upTo(0.001, 100)
			})
			.map((addition) => [{ ...addition, name: 'Test thickener' }])
	)
});
const inputsOf = (bodies: fc.Arbitrary<Solid[]>) =>
	fc
		.record({
			solids: bodies,
			choices,
			shop: shops,
			build: fc.constantFrom('brush-80', 'brush-11', 'brush-platinum', 'brush-tin'),
			shell: fc.constantFrom('paste-9', 'shell-polyester'),
			casting: fc.constantFrom('casting-plaster', 'casting-polyester'),
			hasDetail: fc.boolean(),
			hasCloth: fc.boolean(),
			porosity: fc.constantFrom('dense' as const, 'porous' as const),
			undercutMm: upTo(0, 1000),
			partsWanted: fc.constantFrom(1, 12, 100_000),
			people: fc.integer({ min: 1, max: 8 }),
			startDay: fc.integer({ min: 0, max: 400 })
		})
		.map((draft): PlanInputs => {
			const base = draft.hasDetail ? detailInputs() : testInputs();
			const { undercutMm, porosity, partsWanted, people, startDay } = draft;
			return {
				...base,
				...given(draft.choices),
				shop: { ...testShop, ...given(draft.shop) },
				pattern: {
					...base.pattern,
					porosity,
					undercutMm,
					partsWanted,
					body: { kind: 'solids', solids: draft.solids }
				},
				materials: {
					...base.materials,
					build: testSheet(draft.build),
					shell: testSheet(draft.shell),
					casting: testSheet(draft.casting),
					...(draft.hasCloth ? { reinforcement: testSheet('mat-450') } : {})
				},
				people,
				startAt: new Date(Date.parse('2026-01-01T09:00:00Z') + startDay * 86_400_000).toISOString()
			};
		});

/** What a refusal must be: it says where, and what would be accepted or what to change. */
function expectInWords(problems: readonly { message: string }[]): void {
	for (const { message } of problems) {
		expect(message).not.toMatch(/undefined|\[object|NaN|Infinity/);
		expect(message).toMatch(
			/accepted|expected|needed|give |accepts|Take |No plan can be computed/i
		);
	}
}

/** The schema's numbers are finite, and those that can't be negative are not. */
function expectSound(plan: Plan): void {
	expect(planSchema.safeParse(plan).error).toBeUndefined();
	for (const { text } of plan.warnings) expect(text).not.toMatch(/undefined|\[object|NaN|Infinity/);
	for (const [path, { value, low = value, high = value }] of Object.entries(plan.figures)) {
		expect([path, value, low, high].slice(1).every(Number.isFinite), path).toBe(true);
		expect(low <= high, path).toBe(true);
		if (/(G|Ml|Cm2|S|M3|ppm|Ppm)$/.test(path) && !path.endsWith('leftS')) {
			expect(value, path).toBeGreaterThanOrEqual(0);
		}
	}
	for (const batch of [...plan.coats, ...plan.shell.rounds]) {
		const fractions = batch.fractions.reduce((sum, { fraction }) => sum + fraction, 0);
		expect(fractions).toBeCloseTo(1, 12);
		const cups = batch.cups.reduce((sum, { massG }) => sum + massG, 0);
		expect(cups).toBeCloseTo(batch.massG, 4);
		const largest = Math.max(...batch.cups.map(({ massG }) => massG));
		expect(largest).toBeLessThanOrEqual(batch.largestCupG + 1e-6);
	}
	for (const { kits, boughtG, needG } of plan.order) {
		if (kits.length > 0) expect(boughtG).toBeGreaterThanOrEqual(needG);
	}
	for (let i = 1; i < plan.calendar.length; i += 1) {
		expect(plan.calendar[i]!.startAt >= plan.calendar[i - 1]!.endAt).toBe(true);
	}
}

describe('plans over random valid inputs', () => {
	/** A plan that holds together, or the reasons for which there is none. */
	const tried = (wanted: PlanInputs): number => {
		const problems = problemsOf(wanted);
		if (problems.length > 0) expectInWords(problems);
		else expectSound(makePlan(wanted));
		return problems.length > 0 ? 0 : 1;
	};

	test('a plan, or a reason in words: never NaN, never negative, cups add up, fractions are whole', () => {
		let made = 0;
		fc.assert(
			fc.property(inputsOf(solids), (wanted) => {
				made += tried(wanted);
			}),
			{ numRuns: 160 }
		);
		expect(made).toBeGreaterThan(4);
	}, 60_000);

	test('the same of patterns from the smallest to the largest that may be entered', () => {
		fc.assert(
			fc.property(inputsOf(anySolids), (wanted) => {
				tried(wanted);
			}),
			{ numRuns: 40 }
		);
	}, 60_000);

	test.each<[string, Partial<PlanInputs>]>([
		['5 °C', { roomTemperatureC: 5 }],
		['35 °C', { roomTemperatureC: 35 }],
		['0 °C', { roomTemperatureC: 0 }],
		['45 °C', { roomTemperatureC: 45 }],
		['1 % humidity', { roomHumidityPct: 1 }],
		['100 % humidity', { roomHumidityPct: 100 }],
		['the thinnest glove', { gloveThicknessMm: 1 }],
		['the thickest glove in the fewest coats', { gloveThicknessMm: 30, buildCoats: 2 }],
		['the thinnest glove in the most coats', { gloveThicknessMm: 1, buildCoats: 12 }],
		['the thinnest shell', { shellThicknessMm: 3 }],
		['the thickest shell', { shellThicknessMm: 80 }]
	])('%s: a plan that holds together, or words', (_what, asked) => {
		tried(testInputs(asked));
		tried(detailInputs(asked));
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
				if (!one || !other) {
					expect(one).toEqual(other);
					return;
				}
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
