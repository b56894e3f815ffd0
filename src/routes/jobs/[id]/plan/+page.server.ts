import { error } from '@sveltejs/kit';
import { briefings } from '$lib/server/content';
import { findJob } from '$lib/server/jobs.repository';
import { namesById } from '$lib/server/job-or-error';
import { isDamaged } from '$lib/server/job-file';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ params, locals }) => {
	const job = await findJob(locals.db, params.id);
	if (!job) error(404, 'There is no such mold.');
	if (isDamaged(job)) error(503, 'This mold’s record is damaged; its plan is not shown.');
	const { decided } = job.state;
	const names = decided ? await namesById(locals.db) : {};
	return {
		id: job.id,
		// The mold's own name, which the frozen plan does not know.
		plan: { ...job.plan, title: job.state.title },
		hash: job.planHash,
		decided: decided && { name: names[decided.by] ?? decided.by, reason: decided.reason },
		briefings: Object.fromEntries([...briefings].map(([slug, { title }]) => [slug, title]))
	};
};
