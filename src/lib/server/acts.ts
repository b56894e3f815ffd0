import type { z } from 'zod';
import { postActsOf } from './act';
import { doerProblem } from './doer-problem';
import { problemOf } from './api';
import type { newActsSchema } from './api-schemas';
import { problemOfAct, statusOfWritten } from './append-answer';
import { isWritten, type AppendResult, type Held } from './append';
import type { Db } from './database';
import type { StoredEvent } from './event-rows';
import type { Problem } from './problem';

type NewAct = z.infer<typeof newActsSchema>['acts'][number];

/** What became of one of several acts. */
export type ActAnswer =
	| { id: string; status: 200 | 201; stored: StoredEvent }
	| { id: string; status: number; problem: Problem };

interface Asked {
	db: Db;
	by: string;
	requestId: string;
}

/**
 * Appends acts of several jobs, each job's in the order given. Each act is judged alone; what is not taken
 * holds back what follows it on the same job, and nothing else.
 *
 * @returns one answer for each act, in the order of the acts
 */
export async function postActs(asked: Asked, acts: readonly NewAct[]): Promise<ActAnswer[]> {
	const jobIds = [...new Set(acts.map(({ jobId }) => jobId))];
	const answers = await Promise.all(
		jobIds.map((id) =>
			postJob(
				asked,
				id,
				acts.filter(({ jobId }) => jobId === id)
			)
		)
	);
	return acts.map(({ jobId }) => {
		const next = answers[jobIds.indexOf(jobId)]?.shift();
		if (!next) throw new Error('an act without an answer');
		return next;
	});
}

async function postJob(
	{ db, by, requestId }: Asked,
	jobId: string,
	acts: readonly NewAct[]
): Promise<ActAnswer[]> {
	const problems = acts.map(({ event }) => doerProblem(event, by));
	const firstUnfit = problems.findIndex((problem) => problem !== null);
	const fitting = firstUnfit === -1 ? acts : acts.slice(0, firstUnfit);
	const not = (problem: Problem) => ({ status: problem.status, problem });
	try {
		const results: Array<AppendResult | Held> =
			fitting.length > 0
				? await postActsOf(
						db,
						jobId,
						fitting.map((act) => ({ ...act, by }))
					)
				: [];
		return acts.map(({ id }, index) => {
			const unfit = problems[index];
			const result = results[index] ?? { status: 'held' as const };
			if (isWritten(result)) return { id, status: statusOfWritten(result), stored: result.stored };
			return { id, ...not(index === firstUnfit && unfit ? unfit : problemOfAct(result)) };
		});
	} catch (error) {
		const problem = { ...problemOf(error, requestId), requestId };
		return acts.map(({ id }) => ({ id, ...not(problem) }));
	}
}
