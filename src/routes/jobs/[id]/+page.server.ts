import { error, redirect } from '@sveltejs/kit';
import { ENTRY_LABELS } from '$lib/core/process/entry-labels';
import { contextOf } from '$lib/core/process/job';
import { allowedTypes } from '$lib/core/process/refusal';
import { stopAt, stopsOf } from '$lib/core/process/progress';
import { sectionOfJob } from '$lib/core/process/section-of-job';
import { jobSummary } from '$lib/core/process/summary';
import { withCustomary } from '$lib/core/quantity/with-customary';
import { isEnteredLater } from '$lib/screen/record/entered-later';
import { skewWords } from '$lib/screen/record/skew-words';
import { newActId } from '$lib/server/act-id';
import { abandonFromForm } from '$lib/server/abandon-form';
import { mayAbandon } from '$lib/server/append-rights';
import { now } from '$lib/server/clock';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import { wordsOf } from '$lib/server/entry-words';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, depends }) => {
	depends('gw:job');
	const { state, log, plan, headSeq, openedAt } = await jobOrError(locals.db, params.id);
	const c = contextOf(state);
	const stops = stopsOf(c);
	const { person } = locals;
	return {
		jobId: params.id,
		seq: headSeq,
		now: now(),
		zone: locals.shop?.zone ?? 'UTC',
		names: await namesById(locals.db),
		openedAt,
		summary: jobSummary(state),
		section: sectionOfJob(c),
		stops: stops.map(({ title }) => title),
		at: state.snapshot.status === 'active' ? stopAt(c, stops) : stops.length,
		endReason: c.endReason,
		decided: state.decided,
		finishAt: plan.finishAt,
		mayAbandon:
			person !== null &&
			mayAbandon(person, c.worker) &&
			allowedTypes(state).includes('job.abandoned'),
		actId: newActId(),
		entries: log
			.map(({ id, seq, event, recordedAt }) => ({
				seq,
				at: event.at,
				by: event.by,
				label: ENTRY_LABELS[event.type],
				words: withCustomary(wordsOf(event), locals.shop?.units ?? 'SI'),
				enteredAt: isEnteredLater({ at: event.at, recordedAt }) ? recordedAt : null,
				skew: skewWords({ sentAt: event.sentAt ?? null, recordedAt }),
				undoneFor: state.undone[id] ?? null
			}))
			.reverse()
	};
};

export const actions: Actions = {
	abandon: async ({ locals, params, request, getClientAddress }) => {
		const { db, person, shop } = locals;
		if (!person || !shop) error(401, 'Sign in first.');
		const answer = await abandonFromForm(db, {
			jobId: params.id,
			personId: person.id,
			zone: shop.zone,
			address: getClientAddress(),
			form: await request.formData()
		});
		if ('abandoned' in answer) redirect(303, `/jobs/${params.id}`);
		return answer;
	}
};
