import { describe, expect, test } from 'vitest';
import { toolboxTalk } from '$lib/core/bench/toolbox-talk';
import { recommendedMaterials } from '$lib/core/content/demo-data';
import type { Plan } from '$lib/core/plan/plan';
import { makePlan } from '$lib/core/plan/make-plan';
import { rehearseJob } from '$lib/core/process/rehearsal';
import { fold } from '$lib/core/process/job';
import { steps, textsOfBench } from '$lib/server/content';
import { demo } from '$lib/server/demo-content';

const startAt = '2026-11-30T13:10:00.000Z';
const phases = Object.fromEntries([...steps].map(([slug, { phase }]) => [slug, phase]));

function planFor(patternId: string): Plan {
	const found = demo.patterns.find(({ id }) => id === patternId);
	if (!found) throw new Error(`no pattern ${patternId}`);
	const materials = recommendedMaterials(demo, found);
	return makePlan({ shop: demo.shop, pattern: found.pattern, materials, people: 1, startAt });
}

function talkFor(plan: Plan) {
	const { log } = rehearseJob(plan, {
		until: 'pattern',
		startAt,
		crew: { worker: 'maker', supervisor: 'supervisor' }
	});
	return toolboxTalk(plan, fold(plan, log), { ...textsOfBench, phases });
}

describe.each(demo.patterns.map(({ id }) => id))('the talk before %s', (id) => {
	const plan = planFor(id);
	const talk = talkFor(plan);

	test('names every danger of the plan, each with a material or a step as its reason', () => {
		const named = talk.hazards.map((hazard) => hazard.id as string);
		expect(named).toEqual(expect.arrayContaining(plan.hazards));
		for (const { label, reason, materials, steps: met } of talk.hazards) {
			expect(materials.length + met.length, label).toBeGreaterThan(0);
			expect(materials.length > 0, label).toBe(reason === 'material');
		}
	});

	test('has no step that the plan leaves out', () => {
		const titles = talk.steps.map(({ title }) => title);
		const has = (slug: string) => titles.includes(textsOfBench.steps[slug]?.title ?? '?');
		expect(has('film')).toBe(plan.release.filmPasses > 0);
		expect(has('detail-coat')).toBe(plan.coats.some(({ kind }) => kind === 'detail'));
		expect(has('build-coat')).toBe(true);
	});

	test('says who has read which briefing, and of whom nothing is known', () => {
		expect(talk.briefings.map(({ slug }) => slug)).toEqual(plan.briefings);
		for (const { read } of talk.briefings) expect(read.map(({ by }) => by)).toEqual(['maker']);
	});
});

test('a silicone glove is no reason for isocyanate', () => {
	for (const { id } of demo.patterns) {
		const isocyanate = talkFor(planFor(id)).hazards.find((hazard) => hazard.id === 'isocyanate');
		for (const { name } of isocyanate?.materials ?? []) {
			const sheet = demo.sheets.find((one) => one.name === name);
			expect(sheet?.family, name).toBe('urethane');
		}
	}
});
