import { eventSchema } from '$lib/core/process/events';
import { fieldProblems, unfit } from './api';
import { now } from './clock';
import type { Problem } from './problem';

/**
 * What is wrong with an act as `by` sends it, before any job is looked at; null when nothing is. Judged
 * field by field here, so that the answer can name each; the append judges the whole.
 */
export function actProblem(event: Readonly<Record<string, unknown>>, by: string): Problem | null {
	// What a device kept for one person must not go out under the name of the next one at it.
	if (event.by !== undefined && event.by !== by) return notTheDoer;
	const parsed = eventSchema.safeParse({ at: now(), ...event, by });
	return parsed.success ? null : unfit(fieldProblems(parsed.error)).problem;
}

const notTheDoer: Problem = {
	status: 403,
	code: 'not-the-doer',
	detail: 'Somebody else did this than who is signed in. Leave "by" out, or sign in as that person.'
};
