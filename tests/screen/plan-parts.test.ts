import { describe, expect, it, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import type { Plan } from '../../src/lib/core/plan/plan';
import { airPlot, limitsAround, type AirStep } from '../../src/lib/screen/plan/air-plot';
import { choiceBars } from '../../src/lib/screen/plan/choice-bars';
import { curePlot } from '../../src/lib/screen/plan/cure-plot';
import { forceRows } from '../../src/lib/screen/plan/force-rows';
import { lawLimit } from '../../src/lib/screen/plan/law-limit';
import { planContents } from '../../src/lib/screen/plan/plan-contents';
import { detailInputs } from '../fixtures/materials';

const plan = makePlan(detailInputs());
const ids = (of: Plan) => planContents(of).flatMap(({ parts }) => parts.map(({ id }) => id));
const section = <T>(value: T | undefined): T => {
	if (value === undefined) throw new Error('the plan lacks a section that this test needs');
	return value;
};
const steps = section(plan.air).steps;
const stepWith = (wanted: (step: AirStep) => boolean): AirStep => section(steps.find(wanted));

describe('the parts of a plan', () => {
	it('begin with what to do, and put what can hurt before what it costs', () => {
		const order = ids(plan);
		expect(order.slice(0, 4)).toEqual(['section', 'phases', 'calendar', 'order']);
		expect(order.indexOf('people')).toBeLessThan(order.indexOf('air'));
		expect(order.indexOf('air')).toBeLessThan(order.indexOf('forces'));
		expect(order.indexOf('forces')).toBeLessThan(order.indexOf('cost'));
	});

	it('are marked by letter and number without a gap', () => {
		for (const { letter, parts } of planContents(plan)) {
			expect(parts.map(({ mark }) => mark)).toEqual(parts.map((_, i) => `${letter}${i + 1}`));
		}
	});

	it('leave out what a plan of an earlier version does not have', () => {
		const { air, room, cure, forces, waste, ...earlier } = plan;
		expect([air, room, cure, forces, waste]).not.toContain(undefined);
		const left = ids(earlier);
		for (const gone of ['air', 'room', 'cure', 'forces', 'waste']) expect(left).not.toContain(gone);
		expect(left).toContain('choice');
	});
});

describe('the plot of a vapor', () => {
	const step = stepWith(({ clearWaitS }) => (clearWaitS ?? 0) > 0);
	const data = section(airPlot(step) ?? undefined);

	it('rises through the work and falls through the wait, joined at the end of the work', () => {
		const [up, down] = section(data.series[0]).pieces;
		const workS = step.overS * step.times;
		expect(section(up).at(-1)?.x).toBeCloseTo(workS, 6);
		expect(section(down)[0]).toEqual(section(up).at(-1));
		expect(section(up).at(-1)?.y).toBeCloseTo(step.peakPpm ?? NaN, 9);
	});

	it('marks the wait from the end of the work to the end of the curve', () => {
		const wait = section(data.spans.find(({ label }) => label.startsWith('wait')));
		expect(wait.toS - wait.fromS).toBeCloseTo(step.clearWaitS ?? NaN, 6);
		expect(wait.toS).toBeCloseTo(data.untilS, 6);
	});

	it('has a row for every point of the curve', () => {
		expect(data.table.rows).toHaveLength(step.curve.length);
	});

	it('marks no wait for what sensitizes, and says that no level is safe', () => {
		const sensitizing = section(airPlot(stepWith(({ isSensitizer }) => isSensitizer)) ?? undefined);
		expect(sensitizing.spans.map(({ label }) => label.split(' ')[0])).toEqual(['work']);
		expect(sensitizing.summary).toMatch(/^No level of .* is known to be safe/);
	});

	test.each(steps.map((each) => [each.title, each] as const))(
		'%s: each limit is either drawn or named as above the plot',
		(_, each) => {
			const { inside, above, levels } = limitsAround(each);
			expect(inside.length + above.length).toBe(each.limits.length);
			expect(new Set(levels.map(({ label }) => label)).size).toBe(levels.length);
			if (each.limit) expect(levels.some(({ stroke }) => stroke === 'dashed')).toBe(true);
		}
	);

	it('says plainly when the level passes the limit', () => {
		const over = { ...step, limit: { ...section(step.limits[0]), ppm: (step.peakPpm ?? 0) / 2 } };
		expect(airPlot(over)?.summary).toContain('above the strictest limit chosen');
		const under = { ...step, limit: { ...section(step.limits[0]), ppm: (step.peakPpm ?? 0) * 2 } };
		expect(airPlot(under)?.summary).toContain('below the strictest limit chosen');
	});

	it('is left out where no law gave a curve', () => {
		expect(airPlot({ ...step, curve: [] })).toBeNull();
	});
});

describe('the plot of cup and coat', () => {
	const material = section(section(plan.cure).materials[0]);

	it('shows both in the units of the shop: water freezes at 0 °C and at 32 °F', () => {
		const cold = {
			...material,
			cup: { ...material.cup, curve: [{ atS: 0, temperatureC: 0, conversion: 0 }] }
		};
		expect(curePlot(cold, 'SI', 100).series[0]?.pieces[0]?.[0]?.y).toBe(0);
		expect(curePlot(cold, 'US', 100).series[0]?.pieces[0]?.[0]?.y).toBe(32);
		expect(curePlot(cold, 'US', 100).reach).toBeCloseTo(212, 9);
		expect(curePlot(cold, 'US', 100).unit).toBe('°F');
	});

	it('marks how long the cup is workable, and has every moment of either curve as a row', () => {
		const data = curePlot(material, 'SI', 100);
		expect(data.spans).toMatchObject([{ fromS: 0, toS: material.cup.workableS }]);
		const moments = new Set([...material.cup.curve, ...material.film.curve].map(({ atS }) => atS));
		expect(data.table.rows).toHaveLength(moments.size);
	});
});

describe('bars of the three ways to build', () => {
	const { estimates } = section(plan.choice);
	const shop = { units: 'US', currency: 'USD' } as const;

	it('stand in one unit, and mark the glove as planned', () => {
		const { bars, unit } = choiceBars(estimates, 'rubberG', shop);
		expect(bars.every(({ text }) => text.endsWith(` ${unit}`))).toBe(true);
		expect(bars.filter(({ isChosen }) => isChosen).map(({ label }) => label)).toEqual(['glove']);
	});

	it('give money as it is in both systems', () => {
		const us = choiceBars(estimates, 'totalPrice', shop).bars.map(({ value }) => value);
		expect(us).toEqual(estimates.map(({ totalPrice }) => totalPrice));
	});
});

describe('a number that a law did not give', () => {
	it('is explained by the limit that was met', () => {
		const text = 'Bulge of the frame: no number is given. spanMm is 9000; accepted: 50 to 3000.';
		const warnings = [{ code: 'law-limit', severity: 'note' as const, where: 'frame', text }];
		expect(lawLimit({ warnings }, 'Bulge of the frame')).toBe(
			'spanMm is 9000; accepted: 50 to 3000.'
		);
		expect(lawLimit({ warnings }, 'Bulge of the shell')).toBeNull();
	});

	it('keeps its row, with what the warning would be about', () => {
		const forces = { ...section(plan.forces), frameBoard: null, roundWall: null };
		const [frame] = forceRows(forces);
		expect(frame?.numbers.map(({ value }) => value)).toEqual([null, null]);
		expect(frame?.about).toBe('Bulge of the frame');
	});

	it('is the only kind without a trace to open', () => {
		for (const { numbers } of forceRows(section(plan.forces))) {
			for (const { path, value } of numbers) {
				if (value !== null) expect(plan.figures, path).toHaveProperty([path]);
			}
		}
	});
});
