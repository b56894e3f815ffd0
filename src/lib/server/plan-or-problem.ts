import type { PlanInputs } from '$lib/core/plan/inputs';
import { makePlan } from '$lib/core/plan/make-plan';
import type { Plan } from '$lib/core/plan/plan';
import { PlanError } from '$lib/core/plan/plan-error';
import { planHash } from '$lib/core/plan/plan-hash';
import { unfit } from './api';
import { ApiProblem } from './problem';

/** The plan for these inputs. @throws ApiProblem 422 when it cannot be computed, saying where and why */
export function planOrProblem(inputs: PlanInputs): Plan {
	try {
		return makePlan(inputs);
	} catch (error) {
		if (error instanceof PlanError) throw unfit([...error.problems]);
		throw error;
	}
}

/**
 * The plan for these inputs, if it is the one that was seen and nothing in it forbids the work.
 *
 * @throws ApiProblem 409 when the hash is another one, 422 when the plan is refused
 */
export function acceptablePlan(inputs: PlanInputs, seenHash: string): Plan {
	const plan = planOrProblem(inputs);
	if (planHash(plan) !== seenHash) {
		throw new ApiProblem({
			status: 409,
			code: 'other-plan',
			detail:
				'These inputs give another plan than the one that was shown. Compute and read it again.'
		});
	}
	const refusals = plan.warnings.filter((warning) => warning.severity === 'refuse');
	if (refusals.length > 0) {
		throw unfit(refusals.map(({ where, text }) => ({ path: where, message: text })));
	}
	return plan;
}
