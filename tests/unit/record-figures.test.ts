import { describe, expect, test } from 'vitest';
import { makePlan } from '../../src/lib/core/plan/make-plan';
import { asBuilt } from '../../src/lib/core/process/as-built';
import { fold } from '../../src/lib/core/process/job';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import { plannedFigures } from '../../src/lib/screen/record/planned-figures';
import { detailInputs } from '../fixtures/materials';

const plan = makePlan(detailInputs());
const crew = { worker: 'mara', supervisor: 'tom' };
const { log } = rehearseJob(plan, { until: 'end', startAt: plan.inputs.startAt, crew });
const built = asBuilt(fold(plan, log), log);
const planned = plannedFigures(plan);

describe('the record opens the plan’s own trace', () => {
	test('of every coat and round: mass, thickness and the cup’s targets', () => {
		expect(built.sections.length).toBeGreaterThan(3);
		for (const section of built.sections) {
			const figures = planned.batches[section.id];
			expect(figures?.massG?.value, section.title).toBe(section.plannedG);
			if (section.thicknessMm !== null) {
				expect(figures?.thicknessMm?.value, section.title).toBe(section.thicknessMm);
			}
			for (const { part, targetG } of section.cups[0]?.parts ?? []) {
				expect(figures?.[`part ${part}`]?.value, `${section.title}, ${part}`).toBe(targetG);
			}
			expect(figures?.workingS?.value).toBe(section.cups[0]?.workingS);
		}
	});

	test('of every wait that was kept', () => {
		expect(built.waits.length).toBeGreaterThan(5);
		for (const { what, plannedS, plannedPath } of built.waits) {
			expect(planned.waits[plannedPath]?.value, what).toBe(plannedS);
		}
		const tested = built.waits.filter(({ closesPath }) => closesPath !== null);
		expect(tested.map(({ closesPath }) => closesPath)).toEqual(
			plan.coats.map((_, i) => `coats.${i}.windowClosesS`)
		);
		for (const { closesPath } of tested) expect(planned.waits[closesPath ?? '']).toBeDefined();
	});

	test('of the thinnest reading that passes and of the shell', () => {
		expect(planned.leastMm?.value).toBe(plan.glove.leastMm);
		expect(planned.shellMm?.value).toBe(plan.shell.thicknessMm);
	});

	test('and an old plan without traces gives none', () => {
		const old = plannedFigures({ ...plan, figures: {} });
		expect(old.leastMm).toBeUndefined();
		expect(Object.values(old.batches).every((of) => Object.keys(of).length === 0)).toBe(true);
	});
});
