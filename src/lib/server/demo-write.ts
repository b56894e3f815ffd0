import { canonicalJson } from '$lib/core/log/canonical';
import { GENESIS, sealEvent } from '$lib/core/log/chain';
import type { Db } from './database';
import type { RehearsedMold } from './demo-jobs';
import { insertEvent } from './event-rows';
import { nativeSha256 } from './native-sha256';

/** Writes a rehearsed job as the bench would have: the frozen plan, then each act sealed to the last. */
export async function writeJob(trx: Db, { jobId, plan, log }: RehearsedMold): Promise<void> {
	// What `planHash` says of the plan, without writing its text a second time.
	const text = canonicalJson(plan);
	await trx
		.insertInto('job')
		.values({
			id: jobId,
			plan: text,
			plan_hash: nativeSha256(text),
			opened_at: log[0]?.event.at ?? plan.inputs.startAt
		})
		.execute();
	let prevHash = GENESIS;
	for (const { id, seq, event } of log) {
		const stored = sealEvent(
			{ jobId, seq, id, recordedAt: event.at, event, prevHash },
			nativeSha256
		);
		await insertEvent(trx, stored);
		prevHash = stored.hash;
	}
}
