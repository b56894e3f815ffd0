import { error } from '@sveltejs/kit';
import { briefings } from '$lib/server/content';
import { findJob } from '$lib/server/jobs.repository';
import { isDamaged } from '$lib/server/job-file';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ params, locals }) => {
	const job = await findJob(locals.db, params.id);
	if (!job) error(404, 'There is no such mold.');
	if (isDamaged(job)) error(503, 'This mold’s record is damaged; its plan is not shown.');
	return {
		id: job.id,
		plan: job.plan,
		hash: job.planHash,
		briefings: Object.fromEntries([...briefings].map(([slug, { title }]) => [slug, title]))
	};
};
