import { describe, expect, test } from 'vitest';
import { recommendedMaterials } from '$lib/core/content/demo-data';
import type { PlanInputs } from '$lib/core/plan/inputs';
import { makePlan } from '$lib/core/plan/make-plan';
import { demo } from '$lib/server/demo-content';
import { withProposedStart } from '../../src/routes/jobs/new/proposed-start';
import { nextShiftStart, startText } from '../../src/routes/jobs/new/shop-clock';

/** A Sunday; the demo shop begins on Monday. */
const now = '2026-11-29T15:00:00.000Z';

function asked(patternId: string): PlanInputs {
	const found = demo.patterns.find(({ id }) => id === patternId);
	if (!found) throw new Error(`no pattern ${patternId}`);
	return {
		shop: demo.shop,
		pattern: found.pattern,
		materials: recommendedMaterials(demo, found),
		people: 1,
		startAt: nextShiftStart(demo.shop, now)
	};
}

const outside = (plan: ReturnType<typeof makePlan>) =>
	plan.calendar.filter(({ outsideShift }) => outsideShift);

describe.each(demo.patterns.map(({ id }) => id))('the start proposed for %s', (id) => {
	const inputs = asked(id);
	const plan = makePlan(inputs);
	const proposed = withProposedStart(plan, inputs, makePlan);

	test('lets nothing fall outside the shifts where a start within two weeks does', () => {
		expect(outside(proposed.plan).length > 0).toBe(
			outside(plan).length > 0 && plan.betterStartAt === null
		);
		expect(proposed.inputs.startAt).toBe(plan.betterStartAt ?? inputs.startAt);
		expect(proposed.plan.inputs.startAt).toBe(proposed.inputs.startAt);
	});

	test('says why it is not the next shift, and when it is says nothing', () => {
		if (proposed.inputs.startAt === inputs.startAt) expect(proposed.why).toBeNull();
		else {
			const works = outside(plan).filter(({ kind }) => kind === 'work');
			for (const { title } of works) expect(proposed.why).toContain(title);
			expect(proposed.why).toContain(startText(inputs.startAt, demo.shop.zone));
			expect(proposed.why).toMatch(/it is finished (at the same time|.+ (later|earlier))\.$/);
		}
	});
});

test('some of these molds would be torn by the next shift, or this proves nothing', () => {
	const torn = demo.patterns.filter(({ id }) => makePlan(asked(id)).betterStartAt !== null);
	expect(torn.length).toBeGreaterThan(0);
});

test('a start of another year is said with that year', () => {
	expect(startText('2020-01-06T13:30:00Z', 'America/Chicago', now)).toBe(
		'Mon, Jan 6, 07:30 (2020)'
	);
	expect(startText('2026-11-30T13:30:00Z', 'America/Chicago', now)).toBe('Mon, Nov 30, 07:30');
});
