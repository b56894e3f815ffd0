import { error } from '@sveltejs/kit';
import { verifyChain } from '$lib/core/log/chain';
import { ENTRY_LABELS } from '$lib/core/process/entry-labels';
import { asBuilt } from '$lib/core/process/as-built';
import { contextOf } from '$lib/core/process/job';
import { sectionOfJob } from '$lib/core/process/section-of-job';
import { jobSummary } from '$lib/core/process/summary';
import { plannedFigures } from '$lib/screen/record/planned-figures';
import { finishOfJob } from '$lib/screen/record/finish-of-job';
import { now } from '$lib/server/clock';
import { briefings, caution, textsByLang } from '$lib/server/content';
import { isDamaged, readJobFile, type JobFile } from '$lib/server/job-file';
import { namesById } from '$lib/server/job-or-error';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, depends }) => {
	depends(`job:${params.id}`);
	// Read from the store, not from what is kept in memory: the page says whether the record is whole.
	const job = await readJobFile(locals.db, params.id);
	if (!job) error(404, 'There is no such mold in this shop. The board lists them all.');
	const shared = {
		jobId: job.id,
		at: now(),
		zone: locals.shop?.zone ?? 'UTC',
		caution: caution.summary
	};
	if (isDamaged(job)) {
		const { damage, openedAt, headSeq } = job;
		return { ...shared, damaged: { damage, openedAt, headSeq }, record: null };
	}
	return { ...shared, damaged: null, record: recordOf(job, await namesById(locals.db)) };
};

function recordOf(job: JobFile, names: Record<string, string>) {
	const { state, log, plan } = job;
	const c = contextOf(state);
	const chain = verifyChain(log);
	const { status, phaseTitle, step, progress } = jobSummary(state);
	return {
		title: state.title,
		status,
		phaseTitle,
		step,
		progress,
		names,
		openedAt: job.openedAt,
		openedBy: state.openedBy,
		endReason: c.endReason,
		planHash: job.planHash,
		headHash: job.headHash,
		chainFault: chain.ok ? null : chain.reason,
		section: sectionOfJob(c),
		bridging: plan.bridging ?? null,
		plannedShellMm: plan.shell.thicknessMm,
		planned: plannedFigures(plan),
		built: asBuilt(state, log),
		finish: finishOfJob(state),
		briefingTitles: Object.fromEntries(
			[...briefings.values()].map(({ slug, title, hash, readMin }) => [
				slug,
				{
					title,
					readMin,
					hashes: { en: hash, es: textsByLang.es.briefings.get(slug)?.hash ?? '' }
				}
			])
		),
		entries: log.map(({ id, seq, event, hash, recordedAt }) => ({
			seq,
			at: event.at,
			recordedAt,
			sentAt: event.sentAt ?? null,
			by: event.by,
			label: ENTRY_LABELS[event.type],
			hash,
			isUndone: state.undone[id] !== undefined
		}))
	};
}
