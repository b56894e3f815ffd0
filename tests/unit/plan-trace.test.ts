import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explain, type Explanation } from '../../src/lib/core/plan/explain';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { planSchema, type Plan } from '../../src/lib/core/plan/plan';
import { detailInputs, testSheet, testShop } from '../fixtures/materials';

const base = detailInputs();
const plan = makePlan({
	...base,
	materials: { ...base.materials, shell: testSheet('shell-polyester') },
	additions: [{ to: 'build', name: 'Test thickener', partsPerHundred: 2 }],
	shop: { ...testShop, nightTemperatureC: 15, measuredFanM3PerH: 900, roomVolumeM3: 80 }
});

const valueAt = (of: Plan, path: string): unknown =>
	path
		.split('.')
		.reduce<unknown>((value, key) => (value as Record<string, unknown> | null)?.[key], of);

/** Every number that somebody acts on: pours, waits, lifts, wears, buys or breathes by it. */
const each = (count: number, path: (i: number) => string[]): string[] =>
	Array.from({ length: count }, (_, i) => path(i)).flat();
const ACTED_ON = [
	...['release.waxG', 'release.waxHazeS', 'release.filmG', 'release.filmDryS', 'shellRelease.waxG'],
	...[
		'frame.gapMm',
		'frame.insideLengthMm',
		'frame.insideWidthMm',
		'frame.heightMm',
		'frame.flangeMm',
		...['lengthMm', 'widthMm', 'thicknessMm'].flatMap((key) =>
			plan.frame.boards.map((_, i) => `frame.boards.${i}.${key}`)
		),
		'glove.thicknessMm',
		'glove.leastMm'
	],
	...each(plan.coats.length, (i) =>
		[
			'thicknessMm',
			'volumeMl',
			'massG',
			'largestCupG',
			'workingS',
			'tackTestS',
			'windowClosesS'
		].map((key) => `coats.${i}.${key}`)
	),
	...['coats.0.brushBackS', 'coats.0.cups.0.parts.0.massG', 'coats.0.fractions.0.fraction'],
	...['gloveCure.testS', 'shellCure.testS', 'shell.thicknessMm'],
	...each(plan.shell.rounds.length, (i) =>
		['massG', 'largestCupG', 'workingS', 'windowClosesS'].map((key) => `shell.rounds.${i}.${key}`)
	),
	...each(plan.coats.length, (i) =>
		['massG', 'cupVolumeMl'].map((key) => `coats.${i}.cups.0.${key}`)
	),
	...each(plan.pour.parts.length, (i) => [`pour.parts.${i}.massG`]),
	...['pour.volumeMl', 'pour.massG', 'pour.headMm', 'pour.pressurePa'],
	...['weights.gloveG', 'weights.shellG', 'weights.frameG', 'weights.filledG'],
	...each(plan.order.length, (i) =>
		['needG', 'safeG', 'boughtG', 'leftoverG', 'price'].map((key) => `order.${i}.${key}`)
	),
	...['cost.materials', 'cost.labor', 'cost.total', 'cost.perPart', 'cost.laborS'],
	...['block.rubberG', 'block.gloveRubberG', 'block.cost', 'block.gloveCost', 'block.days'],
	...[
		'room.dewPointC',
		'room.lowestSurfaceC',
		'room.surfaceMarginK',
		'room.absoluteHumidityGPerM3'
	],
	...['room.filmDrying.lowS', 'room.filmDrying.highS'],
	...['walls.holdingLimitMm', 'walls.neededYieldStressPa', 'walls.sagSpeedMmPerS'],
	...['walls.detail.drainedMm', 'walls.detail.meanMm', 'walls.detail.puddleMm'],
	...each(plan.cure?.materials.length ?? 0, (i) => [
		`cure.materials.${i}.cup.peakC`,
		`cure.materials.${i}.cup.workableS`,
		`cure.materials.${i}.film.peakC`
	]),
	...[
		'air.flowM3PerH',
		'air.roomM3',
		'air.airChangesPerH',
		'air.halfLifeS',
		'air.mixtureIndex.index'
	],
	...(plan.air?.steps ?? []).flatMap((step, i) =>
		(
			[
				'releaseGPerMin',
				'ceilingPpm',
				'dilutionM3PerH',
				'fireM3PerH',
				'lelFraction',
				'peakPpm',
				'clearWaitS'
			] as const
		)
			.filter((key) => step[key] !== null)
			.map((key) => `air.steps.${i}.${key}`)
	),
	...[
		'lifting.recommendedG',
		'lifting.lifts.0.massG',
		'lifting.lifts.1.centerMm',
		'lifting.lifts.2.index'
	],
	...[
		'lifting.lifts.1.tippingDeg',
		'forces.frameBoard.deflectionMm',
		'forces.shellWall.deflectionMm'
	],
	...['forces.lid.upliftN', 'forces.lid.strapN', 'forces.pattern.upliftN'],
	...['sizes.rows.0.partMm', 'sizes.rows.2.oversizeMm', 'sizes.volumeShrinkageFraction'],
	...['plaster.plasterG', 'plaster.waterG', 'plaster.dryG', 'plaster.yieldMlPerKg'],
	...['choice.estimates.2.totalPrice', 'choice.estimates.1.moldG', 'choice.evenScale'],
	...[
		'life.moldsCount',
		'life.totalPricePerPart',
		'waste.buildG',
		'waste.perPartG',
		'waste.lines.0.wasteG'
	],
	...[
		'weighing.0.smallestBatchG',
		'weighing.0.uncertaintyFraction',
		'additions.0.batches.0.perCupG'
	]
];

describe('the trace of a number', () => {
	test('the plan is a valid one, with every section', () => {
		expect(planSchema.safeParse(plan).error).toBeUndefined();
	});

	test.each(ACTED_ON)('%s opens, and shows the number that stands in the plan', (path) => {
		const value = valueAt(plan, path);
		expect(typeof value).toBe('number');
		const trace = explain(plan, path);
		expect(trace?.value).toBe(value);
		expect(trace?.law.source.length).toBeGreaterThan(5);
		expect(trace?.inputs.length).toBeGreaterThan(0);
	});

	test('a computed input opens in turn, down to what was entered or stated', () => {
		const leaves = (node: Explanation): string[] =>
			node.inputs.flatMap((input) => (input.from ? leaves(input.from) : [input.origin]));
		const trace = explain(plan, 'lifting.lifts.0.massG');
		expect(trace?.inputs.some(({ from }) => from?.path === 'weights.gloveG')).toBe(true);
		expect(trace && leaves(trace)).toContain('data sheet');
	});

	test('every figure that an input points to exists and shows the same value', () => {
		for (const [path, figure] of Object.entries(plan.figures)) {
			for (const input of figure.inputs) {
				if (input.figure === undefined) continue;
				expect(plan.figures[input.figure], `${path} -> ${input.figure}`).toBeDefined();
				expect(plan.figures[input.figure]?.value, `${path} -> ${input.figure}`).toBe(input.value);
			}
		}
	});

	test('a likely range holds its value', () => {
		const ranged = Object.values(plan.figures).filter(({ low }) => low !== undefined);
		expect(ranged.length).toBeGreaterThan(10);
		for (const { label, value, low = 0, high = 0 } of ranged) {
			// A number taken from a band is one of its ends.
			expect(value, label).toBeGreaterThanOrEqual(low);
			if (!label.startsWith('Drying')) expect(value, label).toBeLessThanOrEqual(high);
		}
	});

	test('an unknown path and a figure that stands on itself end in null, not in a loop', () => {
		expect(explain(plan, 'no.such.number')).toBeNull();
		expect(explain(plan, 'constructor')).toBeNull();
		const figure = plan.figures['weights.gloveG']!;
		const input = { symbol: 'a', label: 'a', value: 1, unit: 'g', origin: 'computed' } as const;
		const looped = { a: { ...figure, inputs: [{ ...input, figure: 'a' }] } };
		expect(explain({ figures: looped }, 'a')?.inputs[0]?.from).toBeUndefined();
	});
});

describe('rooms and shops of every kind', () => {
	const maybe = (min: number, max: number) =>
		fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined });

	test('air, heat, nights and lifting give finite numbers, or null and a warning that names the limit', () => {
		fc.assert(
			fc.property(
				fc.record({
					roomVolumeM3: maybe(1, 1e5),
					measuredFanM3PerH: maybe(0.01, 1e6),
					mixingFactor: maybe(1, 10),
					nightTemperatureC: maybe(-10, 45),
					roomTemperatureC: fc.double({ min: 5, max: 35, noNaN: true }),
					humidityPct: fc.double({ min: 1, max: 100, noNaN: true }),
					surfaceTemperatureC: maybe(-20, 60),
					airSpeedMPerS: maybe(0, 3),
					shell: fc.constantFrom('paste-9', 'shell-polyester')
				}),
				({ roomTemperatureC, humidityPct, surfaceTemperatureC, shell, ...draft }) => {
					const shop = Object.fromEntries(
						Object.entries(draft).filter(([, value]) => value !== undefined)
					);
					let made: Plan;
					try {
						made = makePlan({
							...base,
							shop: { ...testShop, ...shop },
							materials: { ...base.materials, shell: testSheet(shell) },
							roomTemperatureC,
							roomHumidityPct: humidityPct,
							...(surfaceTemperatureC === undefined ? {} : { surfaceTemperatureC })
						});
					} catch (error) {
						expect((error as Error).message).toMatch(/accepted|Accepted/);
						return;
					}
					expect(planSchema.safeParse(made).error).toBeUndefined();
					for (const figure of Object.values(made.figures)) {
						expect(Number.isFinite(figure.value), figure.label).toBe(true);
					}
					expect(made.air?.allClear).toBe(false);
					expect(made.air?.cautions.length).toBeGreaterThan(0);
					const unknown = made.air?.steps.some(({ peakPpm }) => peakPpm === null);
					if (unknown) expect(made.warnings.map(({ code }) => code)).toContain('law-limit');
				}
			),
			{ numRuns: 40 }
		);
	});
});
