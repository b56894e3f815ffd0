import { canonicalJson } from '$lib/core/log/canonical';
import { GENESIS, sealEvent } from '$lib/core/log/chain';
import { planHash } from '$lib/core/plan/plan-hash';
import type { Db } from './database';
import type { RehearsedMold } from './demo-jobs';
import { insertEvent } from './event-rows';

/** Writes a rehearsed job as the bench would have: the frozen plan, then each act sealed to the last. */
export async function writeJob(trx: Db, { jobId, plan, log }: RehearsedMold): Promise<void> {
	await trx
		.insertInto('job')
		.values({
			id: jobId,
			plan: canonicalJson(plan),
			plan_hash: planHash(plan),
			opened_at: log[0]?.event.at ?? plan.inputs.startAt
		})
		.execute();
	let prevHash = GENESIS;
	for (const { id, seq, event } of log) {
		const stored = sealEvent({ jobId, seq, id, recordedAt: event.at, event, prevHash });
		await insertEvent(trx, stored);
		prevHash = stored.hash;
	}
}
