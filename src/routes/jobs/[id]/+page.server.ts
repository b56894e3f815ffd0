import { ENTRY_LABELS } from '$lib/core/process/entry-labels';
import { contextOf } from '$lib/core/process/job';
import { stopAt, stopsOf } from '$lib/core/process/progress';
import { sectionOfJob } from '$lib/core/process/section-of-job';
import { jobSummary } from '$lib/core/process/summary';
import { withCustomary } from '$lib/core/process/typed-units';
import { now } from '$lib/server/clock';
import { jobOrError, namesById } from '$lib/server/job-or-error';
import { wordsOf } from '$lib/server/entry-words';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, depends }) => {
	depends('gw:job');
	const { state, log, plan, headSeq, openedAt } = await jobOrError(locals.db, params.id);
	const c = contextOf(state);
	const stops = stopsOf(c);
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
		finishAt: plan.finishAt,
		entries: log
			.map(({ id, seq, event }) => ({
				seq,
				at: event.at,
				by: event.by,
				label: ENTRY_LABELS[event.type],
				words: withCustomary(wordsOf(event), locals.shop?.units ?? 'SI'),
				undoneFor: state.undone[id] ?? null
			}))
			.reverse()
	};
};
