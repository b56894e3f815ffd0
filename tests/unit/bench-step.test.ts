import { expect, test } from 'vitest';
import { benchStep } from '../../src/lib/core/process/bench-step';
import { addSeconds } from '../../src/lib/core/process/instant';
import { contextOf } from '../../src/lib/core/process/job';
import { rehearseJob } from '../../src/lib/core/process/rehearsal';
import { handPlan } from '../fixtures/plan';

const crew = { worker: 'mara', supervisor: 'tom' };
const startAt = '2026-03-02T14:00:00.000Z';

test('the briefing asks for the room until it is read, then for the start', () => {
	const plan = handPlan();
	const unread = rehearseJob(plan, { until: () => true, startAt, crew }).state;
	const before = benchStep(unread, { by: 'mara', at: startAt });
	expect(before.acts.find((act) => act.primary)?.type).toBe('room.read');

	const ready = rehearseJob(plan, {
		until: (c) =>
			c.room !== null && (c.briefingsRead['mara'] ?? []).length >= plan.briefings.length,
		startAt,
		crew
	}).state;
	const after = benchStep(ready, { by: 'mara', at: ready.lastAt });
	expect(after.acts.find((act) => act.primary)?.type).toBe('brief.finished');
});

test('a surface whose window shut unseen is shown as one to abrade, not to weigh for', () => {
	const plan = handPlan();
	const { state } = rehearseJob(plan, { until: (c) => c.coatIndex === 1, startAt, crew });
	const closesAt = contextOf(state).windowClosesAt ?? '';

	const open = benchStep(state, { by: 'mara', at: closesAt });
	expect(open.acts.find((act) => act.primary)?.type).toBe('cup.weighed');
	expect(open.amounts.map(({ label }) => label)).toEqual(['B', 'A']);

	const shut = benchStep(state, { by: 'mara', at: addSeconds(closesAt, 1) });
	expect(shut.acts.find((act) => act.primary)?.type).toBe('surface.abraded');
	expect(shut.slug).toBe('abrade');
	expect(shut.amounts).toEqual([]);
});

test('whoever has not read the briefings is told which, before weighing', () => {
	const plan = handPlan();
	const { state } = rehearseJob(plan, { until: 'build', startAt, crew });
	const step = benchStep(state, { by: 'newcomer', at: state.lastAt });
	const weigh = step.acts.find(({ type }) => type === 'cup.weighed');
	for (const slug of plan.briefings) expect(weigh?.blocked).toContain(slug);
});
