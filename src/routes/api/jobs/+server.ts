import { json } from '@sveltejs/kit';
import { planHash } from '$lib/core/plan/plan-hash';
import { jobSummary } from '$lib/core/process/summary';
import { mayEdit } from '$lib/screen/form/may-edit';
import { api, personOf, readJson } from '$lib/server/api';
import { newJobSchema } from '$lib/server/api-schemas';
import { now } from '$lib/server/clock';
import { contentHashes } from '$lib/server/content-hashes';
import type { JobLine } from '$lib/server/job-line';
import { projectJobs } from '$lib/server/job-projection';
import { createJob, NotOpened } from '$lib/server/jobs.repository';
import { nextMoldTitle, titleRefusal } from '$lib/server/mold-titles';
import { decidedPlan } from '$lib/server/plan-decision';
import { ApiProblem } from '$lib/server/problem';
import { acceptablePlan } from '$lib/server/plan-or-problem';
import type { RequestEvent } from './$types';

function summaryOf({ id, openedAt, headSeq, title, state, damage }: JobLine) {
	return { id, openedAt, headSeq, title, damage, summary: state && jobSummary(state) };
}

export const GET = api(async ({ locals }) => {
	return json({ jobs: await projectJobs(locals.db, summaryOf) });
});

export const POST = api<RequestEvent>(async ({ locals, request, getClientAddress }) => {
	if (!mayEdit(locals.person)) {
		throw new ApiProblem({
			status: 403,
			code: 'may-not-accept',
			detail: 'A plan is accepted by a mold maker, a supervisor or the owner.'
		});
	}
	const asked = await readJson(request, newJobSchema);
	const { id: wanted, inputs, planHash: seen, decision } = asked;
	const plan = acceptablePlan(inputs, seen);
	const address = getClientAddress();
	const decided = await decidedPlan(locals.db, { plan, decision, address });
	const title = asked.title ?? (await nextMoldTitle(locals.db, inputs.pattern.name));
	const id = await createJob(locals.db, {
		...(wanted ? { id: wanted } : {}),
		plan,
		title,
		by: personOf(locals).id,
		at: now(),
		content: contentHashes(),
		decided,
		refused: (trx) => titleRefusal(trx, title, wanted)
	}).catch((error: unknown) => {
		if (error instanceof NotOpened) {
			throw new ApiProblem({ status: 409, code: 'title-taken', detail: error.message });
		}
		if (!(error instanceof RangeError)) throw error;
		const detail = `${error.message.charAt(0).toUpperCase()}${error.message.slice(1)}.`;
		throw new ApiProblem({ status: 409, code: 'id-taken', detail });
	});
	return json({ id, planHash: planHash(plan) }, { status: 201 });
});
