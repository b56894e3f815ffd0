import type { Plan } from '$lib/core/plan/plan';
import type { JobState } from '$lib/core/process/job';
import { isDamaged, type DamagedJob, type JobFile } from './job-file';

/** One line of the board. `state` is null, and `damage` says why, when the record is damaged. */
export interface JobLine {
	id: string;
	openedAt: string;
	headSeq: number;
	title: string;
	plan: Plan | null;
	state: JobState | null;
	damage: string | null;
}

/** A job as one of many. */
export function lineOf(job: JobFile | DamagedJob): JobLine {
	const { id, openedAt, headSeq } = job;
	return isDamaged(job)
		? {
				id,
				openedAt,
				headSeq,
				title: 'Record damaged',
				plan: null,
				state: null,
				damage: job.damage
			}
		: {
				id,
				openedAt,
				headSeq,
				title: job.state.title,
				plan: job.plan,
				state: job.state,
				damage: null
			};
}
