import { json } from '@sveltejs/kit';
import { planInputsSchema } from '$lib/core/plan/inputs';
import { planHash } from '$lib/core/plan/plan-hash';
import { api, readJson } from '$lib/server/api';
import { planOrProblem } from '$lib/server/plan-or-problem';

export const POST = api(async ({ request }) => {
	const plan = planOrProblem(await readJson(request, planInputsSchema));
	return json({ plan, planHash: planHash(plan) });
});
