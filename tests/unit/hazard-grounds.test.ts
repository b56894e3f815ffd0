import { describe, expect, test } from 'vitest';
import { toolboxTalk } from '$lib/core/bench/toolbox-talk';
import type { Sheet } from '$lib/core/materials/sheet';
import { makePlan } from '$lib/core/plan/make-plan';
import type { Plan } from '$lib/core/plan/plan';
import { fold } from '$lib/core/process/job';
import { rehearseJob } from '$lib/core/process/rehearsal';
import { steps, textsOfBench } from '$lib/server/content';
import { testInputs, testSheet } from '../fixtures/materials';

const startAt = '2026-11-30T13:10:00.000Z';
const phases = Object.fromEntries([...steps].map(([slug, { phase }]) => [slug, phase]));
const inputs = testInputs();
const sheet = (id: string, over: Partial<Sheet>): Sheet => ({ ...testSheet(id), ...over });
const planOf = (build: Sheet, shell: Sheet) =>
	makePlan({ ...inputs, materials: { ...inputs.materials, build, shell } });

function hazardIn(plan: Plan, id: string) {
	const crew = { worker: 'maker', supervisor: 'supervisor' };
	const { log } = rehearseJob(plan, { until: 'pattern', startAt, crew });
	const talk = toolboxTalk(plan, fold(plan, log), { ...textsOfBench, phases });
	return talk.hazards.find((hazard) => hazard.id === id);
}

describe('a paste that only the heat balance finds hot', () => {
	const paste = sheet('paste-9', {
		hazards: ['isocyanate', 'sensitizer'],
		hazardStatements: ['H317', 'H334'],
		heatJPerG: 200
	});
	const byPaste = {
		name: paste.name,
		use: 'backup shell',
		grounds: ['computed'],
		statements: []
	};

	test('is what the talk blames, though no sheet ticks a hot cup', () => {
		const brush = sheet('brush-80', { hazards: ['isocyanate', 'sensitizer'], heatJPerG: 20 });
		const hot = hazardIn(planOf(brush, paste), 'hot-cup');
		expect(hot).toMatchObject({ reason: 'material', materials: [byPaste] });
	});

	test('stands beside a sheet that ticks it, each with its own ground', () => {
		const brush = sheet('brush-80', { hazards: ['isocyanate', 'hot-cup'], heatJPerG: 20 });
		const hot = hazardIn(planOf(brush, paste), 'hot-cup');
		expect(hot?.materials).toEqual([
			{ name: brush.name, use: 'build coats', grounds: ['named'], statements: [] },
			byPaste
		]);
	});
});

// What each statement means: GHS, UN rev. 9, annex 3. H317 skin sensitizer, H334 respiratory sensitizer, H315 and H319 irritants.
test('a hazard is backed by the statements that mean it, and by no others', () => {
	const hazardStatements = ['H315', 'H317', 'H319', 'H334'];
	const brush = sheet('brush-80', { hazards: ['isocyanate'], hazardStatements });
	const plan = planOf(brush, testSheet('paste-9'));
	const of = (id: string) => hazardIn(plan, id)?.materials.find(({ use }) => use === 'build coats');
	expect(of('isocyanate')).toMatchObject({ grounds: ['named'], statements: ['H334'] });
	expect(of('sensitizer')).toMatchObject({ grounds: [], statements: ['H317'] });
});

test('what is assumed of a silent sheet is said to be assumed', () => {
	const brush = sheet('brush-80', { hazards: [], hazardStatements: [] });
	const isocyanate = hazardIn(planOf(brush, testSheet('paste-9')), 'isocyanate');
	expect(isocyanate?.materials).toContainEqual({
		name: brush.name,
		use: 'build coats',
		grounds: ['assumed'],
		statements: []
	});
});

test('what the plan names and no material brings is put on none of them', () => {
	const plan = planOf(testSheet('brush-80'), testSheet('paste-9'));
	const styrene = hazardIn({ ...plan, hazards: [...plan.hazards, 'styrene'] }, 'styrene');
	expect(styrene).toMatchObject({ reason: 'plan', materials: [] });
});
