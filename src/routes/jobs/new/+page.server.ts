import { randomUUID } from 'node:crypto';
import { error, fail, redirect } from '@sveltejs/kit';
import { z } from 'zod';
import type { PlanProblem } from '$lib/core/plan/plan-error';
import { planHash } from '$lib/core/plan/plan-hash';
import { mayEdit } from '$lib/screen/form/may-edit';
import { now } from '$lib/server/clock';
import { briefings } from '$lib/server/content';
import { contentHashes } from '$lib/server/content-hashes';
import { createJob, NotOpened } from '$lib/server/jobs.repository';
import { nextMoldTitle, titleRefusal } from '$lib/server/mold-titles';
import { getPattern, listPatterns } from '$lib/server/patterns.repository';
import { plansSigners, readDecision } from '$lib/server/decision-form';
import { decidedPlan, toDecide } from '$lib/server/plan-decision';
import { acceptablePlan, planOrProblem } from '$lib/server/plan-or-problem';
import { ApiProblem } from '$lib/server/problem';
import { listSheets } from '$lib/server/sheets.repository';
import { readQuery } from './choices';
import { materialForm } from './material-form';
import { linkedProblem } from './problem-link';
import { smallerCups } from './smaller-cups';
import { withProposedStart } from './proposed-start';
import { readChoices, type ReadChoices } from './read-choices';
import { startText, wallClock } from './shop-clock';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, url }) => {
	const { shop, choices, pattern, library, read } = await asked(locals, url);
	const { plan, problems, startAt, whyLater } = attempt(read, choices.start === '');
	const at = now();
	return {
		choices,
		patterns: (await listPatterns(locals.db)).map(({ id, pattern: { name } }) => ({ id, name })),
		patternIsGone: choices.pattern !== '' && !pattern,
		...materialForm({ pattern, sheets: read.sheets, library, choices }),
		errors: read.errors,
		problems: problems.map((problem) =>
			linkedProblem(problem, {
				sheets: read.sheets,
				pattern: pattern && { id: choices.pattern, name: pattern.name }
			})
		),
		plan,
		title: pattern && (await nextMoldTitle(locals.db, pattern.name)),
		hash: plan && planHash(plan),
		startAt,
		startText: startText(startAt, shop.zone, at),
		whyLater,
		isPast: startAt < at,
		betterStart: plan?.betterStartAt ? wallClock(plan.betterStartAt, shop.zone) : null,
		briefings: Object.fromEntries([...briefings].map(([slug, { title }]) => [slug, title])),
		canAccept: mayEdit(locals.person),
		decision: plan &&
			toDecide(plan).length > 0 && {
				...(await plansSigners(locals.db, locals.person?.id)),
				smallerCups: smallerCups(plan, url)
			},
		// Pressed twice, one mold is opened.
		jobId: randomUUID()
	};
};

const MOST_LETTERS = 120;

const acceptSchema = z.object({
	hash: z.string().regex(/^[0-9a-f]{64}$/),
	startAt: z.iso.datetime(),
	jobId: z.uuid(),
	title: z.string().trim()
});

export const actions: Actions = {
	accept: async ({ request, locals, url, getClientAddress }) => {
		const { person } = locals;
		if (!person || !mayEdit(person)) {
			error(403, 'A plan is accepted by a mold maker, a supervisor or the owner.');
		}
		const form = await request.formData();
		const posted = acceptSchema.safeParse(Object.fromEntries(form));
		if (!posted.success)
			return fail(400, { refusal: 'The plan’s hash is missing; open it again.' });
		const { hash, startAt, jobId } = posted.data;
		const { read } = await asked(locals, url, startAt);
		if (!read.inputs) return fail(422, { refusal: 'These choices give no plan.' });
		const { db } = locals;
		const title = posted.data.title || (await nextMoldTitle(db, read.inputs.pattern.name));
		const titleError =
			title.length > MOST_LETTERS
				? `${title.length} characters are too many; accepted: up to ${MOST_LETTERS}.`
				: null;
		if (titleError) return fail(409, { title, titleError });
		const word = readDecision(form);
		try {
			const plan = acceptablePlan(read.inputs, hash);
			const { decision } = word;
			if (!decision && toDecide(plan).length > 0) return fail(422, { title, word: word.answer });
			const address = getClientAddress();
			const decided = await decidedPlan(db, { plan, decision, address });
			const content = contentHashes();
			const refused = (trx: typeof db) => titleRefusal(trx, title, jobId);
			const opening = { id: jobId, plan, title, by: person.id, at: now(), content, decided };
			await createJob(db, { ...opening, refused });
		} catch (problem) {
			if (problem instanceof NotOpened) {
				return fail(409, { title, word: word.answer, titleError: problem.message });
			}
			if (problem instanceof ApiProblem) {
				const { status, detail } = problem.problem;
				return fail(status, { title, word: word.answer, refusal: detail });
			}
			if (problem instanceof RangeError) {
				return fail(409, {
					refusal: 'This plan was just accepted as another mold; see the board.'
				});
			}
			throw problem;
		}
		redirect(303, `/jobs/${jobId}`);
	}
};

async function asked(locals: App.Locals, url: URL, startAt?: string) {
	const { shop, db } = locals;
	if (!shop) redirect(303, '/start');
	const choices = readQuery(url.searchParams);
	const row = choices.pattern === '' ? null : await getPattern(db, choices.pattern);
	const library = await listSheets(db, { withRetired: true });
	const pattern = row?.pattern ?? null;
	const given = { choices, shop, pattern, library, now: now(), ...(startAt ? { startAt } : {}) };
	return { shop, choices, pattern, library, read: readChoices(given) };
}

function attempt({ inputs, startAt }: ReadChoices, isStartOpen: boolean) {
	const nothing = { plan: null, startAt, whyLater: null };
	if (!inputs) return { ...nothing, problems: [] as PlanProblem[] };
	try {
		const asked = planOrProblem(inputs);
		const proposed = isStartOpen ? withProposedStart(asked, inputs, planOrProblem) : null;
		return {
			plan: proposed?.plan ?? asked,
			startAt: proposed?.inputs.startAt ?? startAt,
			whyLater: proposed?.why ?? null,
			problems: [] as PlanProblem[]
		};
	} catch (thrown) {
		if (!(thrown instanceof ApiProblem)) throw thrown;
		const { errors, detail } = thrown.problem;
		return { ...nothing, problems: errors ?? [{ path: '', message: detail }] };
	}
}
