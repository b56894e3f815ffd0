import type { Problem } from './problem';

const notTheDoer: Problem = {
	status: 403,
	code: 'not-the-doer',
	detail: 'Somebody else did this than who is signed in. Leave "by" out, or sign in as that person.'
};

/** What a device kept for one person must not go out under the name of the next one at it; null when it does not. */
export function doerProblem(event: Readonly<Record<string, unknown>>, by: string): Problem | null {
	return event.by !== undefined && event.by !== by ? notTheDoer : null;
}
