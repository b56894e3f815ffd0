import { verifyChain } from '$lib/core/log/chain';
import type { Plan } from '$lib/core/plan/plan';
import { advanceAll, openJob, type JobState } from '$lib/core/process/job';
import type { Db } from './database';
import { readEvents, type StoredEvent } from './event-rows';
import { nativeSha256 } from './native-sha256';

/** A job as read from the store: the frozen plan, the whole log, and what they come to. */
export interface JobFile {
	id: string;
	plan: Plan;
	planHash: string;
	openedAt: string;
	log: StoredEvent[];
	headSeq: number;
	headHash: string;
	state: JobState;
}

/** A job whose stored record no longer is what was written. It is shown, never worked on. */
export interface DamagedJob {
	id: string;
	openedAt: string;
	headSeq: number;
	/** What is wrong, in words. */
	damage: string;
}

/** Thrown where a damaged job is asked for as if it were whole. */
export class DamagedRecord extends Error {
	override name = 'DamagedRecord';

	constructor(damage: string) {
		super(`This job's record is damaged and is not worked on. ${damage}`);
	}
}

export function isDamaged(job: JobFile | DamagedJob): job is DamagedJob {
	return 'damage' in job;
}

/** Reads, verifies and folds a whole job, or only what came after `known`. Null when there is none. */
export async function readJobFile(
	db: Db,
	id: string,
	known?: JobFile
): Promise<JobFile | DamagedJob | null> {
	if (known) {
		// Its last entry is read once more: a store put back to an earlier day is not what was known.
		const [last, ...news] = await readEvents(db, id, known.headSeq - 1);
		if (last?.hash !== known.headHash) return readJobFile(db, id);
		if (news.length === 0) return known;
		const grown = extend(known, news);
		return typeof grown === 'string' ? readJobFile(db, id) : grown;
	}
	const row = await db.selectFrom('job').selectAll().where('id', '=', id).executeTakeFirst();
	if (!row) return null;

	const log = await readEvents(db, id).catch(unreadable);
	const damaged = (damage: string): DamagedJob => ({
		id,
		openedAt: row.opened_at,
		headSeq: log?.length ?? 0,
		damage
	});
	if (!log) return damaged('An entry of the log can no longer be read.');
	if (nativeSha256(row.plan) !== row.plan_hash) return damaged('The plan does not match its hash.');
	const chain = verifyChain(log, nativeSha256);
	if (!chain.ok) return damaged(`The log is broken: ${chain.reason}.`);
	const [first] = log;
	if (first?.jobId !== id) return damaged('The log has no first event.');
	if (first.event.type !== 'job.opened' || first.event.planHash !== row.plan_hash) {
		return damaged('The log was opened with another plan.');
	}
	// Its hash holds, so it is the plan that was parsed when the job was created.
	const plan = JSON.parse(row.plan) as Plan;
	const opened = openState(plan, first);
	if (typeof opened === 'string') return damaged(opened);
	const start: JobFile = {
		id,
		plan,
		planHash: row.plan_hash,
		openedAt: row.opened_at,
		log: [first],
		headSeq: 1,
		headHash: first.hash,
		state: opened
	};
	const file = extend(start, log.slice(1));
	return typeof file === 'string' ? damaged(file) : file;
}

/** Null for stored text that no longer is JSON; what the store itself says goes on. */
function unreadable(error: unknown): null {
	if (error instanceof SyntaxError) return null;
	throw error;
}

/** The job with more events on it, or why they do not go on it. */
export function extend(file: JobFile, news: readonly StoredEvent[]): JobFile | string {
	let { headHash, headSeq } = file;
	for (const stored of news) {
		if (stored.seq !== headSeq + 1 || stored.prevHash !== headHash) {
			return `Event ${stored.seq} does not follow event ${headSeq}.`;
		}
		headHash = stored.hash;
		headSeq = stored.seq;
	}
	const end = advanceAll(file.state, news);
	if (!end.ok) return `Event ${end.refused.seq} is not taken: ${end.reason}.`;
	return { ...file, log: [...file.log, ...news], state: end.state, headHash, headSeq };
}

function openState(plan: Plan, first: StoredEvent): JobState | string {
	try {
		return openJob(plan, first);
	} catch (error) {
		return error instanceof Error ? error.message : String(error);
	}
}
