import { canonicalJson, sha256Hex } from '$lib/core/log/canonical';
import { verifyChain, type StoredEvent } from '$lib/core/log/chain';

/** A record as far as its hashes can be worked out again. */
export interface HashedRecord {
	plan: unknown;
	planHash: string;
	events: StoredEvent[];
	headHash: string;
	recordHash: string;
}

export interface RecordCheck {
	/** Each thing worked out again, and what is wrong with it; null when it agrees. */
	checks: Array<{ what: string; fault: string | null }>;
	head: string | null;
}

/** Works out every hash of a record anew: plan, chain of entries, last entry, the record itself. */
export function checkRecord(record: HashedRecord): RecordCheck {
	const chain = verifyChain(record.events);
	const unsealed = Object.fromEntries(
		Object.entries(record).filter(([key]) => key !== 'recordHash')
	);
	const agrees = (hash: string, said: string) =>
		hash === said ? null : `It comes to ${hash}, the record says ${said}.`;
	return {
		head: chain.ok ? chain.head : null,
		checks: [
			{
				what: 'The frozen plan is the one that was accepted',
				fault: agrees(sha256Hex(canonicalJson(record.plan)), record.planHash)
			},
			{
				what: `All ${record.events.length} entries follow one another unaltered`,
				fault: chain.ok ? null : `${chain.reason}.`
			},
			{
				what: 'The last entry is the one that the record names',
				fault: chain.ok ? agrees(chain.head, record.headHash) : 'The chain is broken before it.'
			},
			{
				what: 'The file is as it was written',
				fault: agrees(sha256Hex(canonicalJson(unsealed)), record.recordHash)
			}
		]
	};
}
