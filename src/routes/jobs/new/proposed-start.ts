import type { PlanInputs } from '$lib/core/plan/inputs';
import type { Plan } from '$lib/core/plan/plan';
import { durationText } from '$lib/core/quantity/duration-text';
import { startText } from './shop-clock';

interface Proposed {
	plan: Plan;
	inputs: PlanInputs;
	/** Why the start is not the next shift, for whoever left it open; null when it is. */
	why: string | null;
}

/**
 * The plan with the start that is proposed to whoever names none: the next shift, or, where work would then fall
 * outside the shifts, the first start within two weeks that keeps all of it inside.
 *
 * @param make - makes a plan; may throw, which leaves the next shift
 */
export function withProposedStart(
	plan: Plan,
	inputs: PlanInputs,
	make: (inputs: PlanInputs) => Plan
): Proposed {
	const asked = { plan, inputs, why: null };
	if (plan.betterStartAt === null) return asked;
	const later = { ...inputs, startAt: plan.betterStartAt };
	const better = make(later);
	if (better.calendar.some(({ outsideShift }) => outsideShift)) return asked;
	return { plan: better, inputs: later, why: whyLater(plan, better) };
}

function whyLater(asked: Plan, better: Plan): string {
	const { zone } = asked.inputs.shop;
	const outside = asked.calendar.filter(
		({ kind, outsideShift }) => kind === 'work' && outsideShift
	);
	const laterS = (Date.parse(better.finishAt) - Date.parse(asked.finishAt)) / 1000;
	const ends =
		laterS === 0
			? 'it is finished at the same time'
			: `it is finished ${durationText(Math.abs(laterS))} ${laterS > 0 ? 'later' : 'earlier'}`;
	const titles = outside.map(({ title }) => title).join(', ');
	return `With the next shift, ${startText(asked.inputs.startAt, zone)}, this would fall outside the shop’s shifts: ${titles}. Begun ${startText(better.inputs.startAt, zone)}, nothing does, and ${ends}.`;
}
