import { cupLabels } from '$lib/core/process/cup-labels';
import { contextOf } from '$lib/core/process/job';
import { sectionOfJob } from '$lib/core/process/section-of-job';
import { jobOrError } from '$lib/server/job-or-error';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, url }) => {
	const { state, plan } = await jobOrError(locals.db, params.id);
	const marked = state.effective.findLast(({ event }) => event.type === 'mold.marked')?.event;
	return {
		jobId: params.id,
		title: state.title,
		mark: marked?.type === 'mold.marked' ? marked.mark : null,
		section: sectionOfJob(contextOf(state)),
		zone: locals.shop?.zone ?? 'UTC',
		isDemo: plan.inputs.shop.isDemo,
		/** As this device reaches the shop, so that the next one does too. */
		addresses: {
			mold: new URL(`/jobs/${params.id}`, url).href,
			bench: new URL(`/jobs/${params.id}/bench`, url).href
		},
		materials: {
			glove: plan.inputs.materials.build.name,
			shell: plan.inputs.materials.shell.name,
			casting: plan.inputs.materials.casting.name
		},
		filledG: plan.weights.filledG,
		/** Upper end of what it likely weighs: whoever lifts it must be ready for that. */
		heaviestG: plan.figures['weights.filledG']?.high ?? plan.weights.filledG,
		cups: cupLabels(state).filter(({ isLaid }) => !isLaid)
	};
};
