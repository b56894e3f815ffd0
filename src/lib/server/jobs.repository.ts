import { randomUUID } from 'node:crypto';
import { canonicalJson } from '$lib/core/log/canonical';
import { GENESIS, sealEvent } from '$lib/core/log/chain';
import { planSchema, type Plan } from '$lib/core/plan/plan';
import type { EventOf } from '$lib/core/process/events';
import type { Db } from './database';
import { exclusively } from './dialect';
import { insertEvent } from './event-rows';
import { cachedJob, jobCacheOf } from './job-cache';
import { DamagedRecord, isDamaged, type DamagedJob, type JobFile } from './job-file';
import type { JobLine } from './job-line';
import { projectJobs } from './job-projection';
import { publishAppended } from './live';
import { announce } from './live-servers';
import { nativeSha256 } from './native-sha256';

export interface NewJob {
	/** Chosen by whoever asks, so that asking twice opens one job. */
	id?: string;
	plan: Plan;
	/** What the mold is called; the plan's own title when left out. */
	title?: string;
	/** Person who opens it. */
	by: string;
	at: string;
	/** Hash by slug of every text in force. */
	content: Record<string, string>;
	/** A supervisor's word on what the plan may be built with only on one. */
	decided?: EventOf<'job.opened'>['decided'];
	/** Why it cannot be opened, judged while nobody else opens one; null or left out when it can. */
	refused?: (trx: Db) => Promise<string | null>;
}

/** A job that was not opened, with the reason as a sentence for whoever asked. */
export class NotOpened extends Error {}

/**
 * Freezes a plan as a job: plan, hash and first event in one transaction.
 *
 * @returns its id; the one already there when `id` is that of a job with the same plan
 * @throws NotOpened with the words of `refused`; RangeError when `id` is taken by a job with another plan; ZodError when the plan breaks its schema
 */
export async function createJob(
	db: Db,
	{ id = randomUUID(), plan, title = plan.title, by, at, content, decided, refused }: NewJob
): Promise<string> {
	const text = canonicalJson(planSchema.parse(plan));
	const planHash = nativeSha256(text);
	const first = sealEvent({
		jobId: id,
		seq: 1,
		id: randomUUID(),
		recordedAt: at,
		event: {
			type: 'job.opened' as const,
			at,
			by,
			jobId: id,
			title: title.slice(0, 120),
			planHash,
			processVersion: plan.processVersion,
			content,
			...(decided && { decided })
		},
		prevHash: GENESIS
	});
	const isNew = await exclusively(db, 'opening a job', async (trx) => {
		const same = await trx
			.selectFrom('job')
			.select('plan_hash')
			.where('id', '=', id)
			.executeTakeFirst();
		if (same && same.plan_hash !== planHash) {
			throw new RangeError(`job ${id} exists with another plan; accepted: an unused id`);
		}
		if (same) return false;
		const reason = await refused?.(trx);
		if (reason) throw new NotOpened(reason);
		await trx
			.insertInto('job')
			.values({ id, plan: text, plan_hash: planHash, opened_at: at })
			.execute();
		await insertEvent(trx, first);
		await announce(trx, { jobId: id, seq: 1 });
		return true;
	});
	if (isNew) publishAppended({ jobId: id, seq: 1 });
	return id;
}

/** A job with its whole log and state, or why it cannot be read, or null when there is none. */
export async function findJob(db: Db, id: string): Promise<JobFile | DamagedJob | null> {
	return cachedJob(db, jobCacheOf(db), id);
}

/**
 * A job with its whole log and state, or null when there is none.
 *
 * @throws DamagedRecord when what is stored no longer is what was written
 */
export async function getJob(db: Db, id: string): Promise<JobFile | null> {
	const job = await findJob(db, id);
	if (job && isDamaged(job)) throw new DamagedRecord(job.damage);
	return job;
}

/** Every job, newest first. A damaged one is a line of its own and hides none of the others. */
export async function listJobs(db: Db): Promise<JobLine[]> {
	// A function of its own each time: whole jobs are many and large, and nothing of them is kept.
	return projectJobs(db, (line) => line);
}
