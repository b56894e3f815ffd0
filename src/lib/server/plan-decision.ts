import { z } from 'zod';
import type { Plan } from '$lib/core/plan/plan';
import type { EventOf } from '$lib/core/process/events';
import { problemOfAct } from './append-answer';
import { unfit } from './api';
import { now } from './clock';
import type { Db } from './database';
import { getPerson } from './people.repository';
import { checkPin } from './pin';
import { pinSchema } from './pin-hash';
import { ApiProblem } from './problem';
import { unfitToSign } from './sign';

/** A supervisor's word on a plan, with the PIN that stands for a signature. */
export const planDecisionSchema = z.strictObject({
	supervisorId: z.string().min(1).max(60),
	pin: pinSchema,
	reason: z.string().trim().min(1).max(2000)
});
export type PlanDecision = z.infer<typeof planDecisionSchema>;

/** What in a plan only a supervisor lets through, in sentences. */
export function toDecide({ warnings }: Pick<Plan, 'warnings'>): string[] {
	return warnings.filter(({ severity }) => severity === 'decide').map(({ text }) => text);
}

/**
 * What the log keeps of the word on a plan; undefined when the plan asks for none.
 *
 * @throws ApiProblem 422 when a word is needed and none was given, 403 or 429 when the PIN is wrong, 403
 *   when its owner may not sign
 */
export async function decidedPlan(
	db: Db,
	{
		plan,
		decision,
		address
	}: { plan: Plan; decision: PlanDecision | null | undefined; address: string }
): Promise<EventOf<'job.opened'>['decided']> {
	const what = toDecide(plan);
	if (what.length === 0) return undefined;
	if (!decision) {
		throw unfit(
			what.map((text) => ({
				path: 'decision',
				message: `${text} Only a supervisor lets that through, with a reason and a PIN.`
			}))
		);
	}
	const { supervisorId, pin, reason } = decision;
	const answer = await checkPin(db, { personId: supervisorId, pin, address, at: now() });
	if (!answer.ok) {
		throw new ApiProblem(problemOfAct({ status: 'wrong PIN', waitS: answer.waitS }));
	}
	const problem = unfitToSign(await getPerson(db, supervisorId));
	if (problem) throw new ApiProblem(problemOfAct({ status: 'may not sign', reason: problem }));
	return { by: supervisorId, reason, what };
}
