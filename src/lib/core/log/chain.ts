import { canonicalJson, sha256Hex } from './canonical';

/** `prevHash` of a job's first event. */
export const GENESIS = '0'.repeat(64);

/** An event as it is kept and exported: who it belongs to, where it stands, and its seal. */
export interface StoredEvent<E = unknown> {
	jobId: string;
	/** 1-based place in the job's log. */
	seq: number;
	id: string;
	/** When the server took it, which may be later than when it was done (`event.at`). */
	recordedAt: string;
	event: E;
	/** `hash` of the event before; `GENESIS` for the first. */
	prevHash: string;
	hash: string;
}

export type UnsealedEvent<E = unknown> = Omit<StoredEvent<E>, 'hash'>;

/** SHA-256 of a text's UTF-8 bytes in lower-case hex: this module's own, or a faster one of the machine. */
export type Sha256 = (text: string) => string;

/** SHA-256 over the canonical JSON of the event without its own hash, lower-case hex. */
export function hashEvent(unsealed: UnsealedEvent, sha256: Sha256 = sha256Hex): string {
	const { jobId, seq, id, recordedAt, event, prevHash } = unsealed;
	return sha256(canonicalJson({ jobId, seq, id, recordedAt, event, prevHash }));
}

/** The event with its hash, ready to be appended. */
export function sealEvent<E>(unsealed: UnsealedEvent<E>, sha256?: Sha256): StoredEvent<E> {
	return { ...unsealed, hash: hashEvent(unsealed, sha256) };
}

export type ChainCheck = { ok: true; head: string } | { ok: false; seq: number; reason: string };

/**
 * Whether the events are one job's whole log from its first event on, in order, unaltered.
 *
 * `seq` of a failure is the place (1-based) at which the log stops being trustworthy. A log cut off
 * at its end is a valid shorter log: compare `head` with a copy kept elsewhere.
 */
export function verifyChain(
	events: readonly StoredEvent[],
	sha256: Sha256 = sha256Hex
): ChainCheck {
	let head = GENESIS;
	const ids = new Set<string>();
	for (const [index, stored] of events.entries()) {
		const seq = index + 1;
		const jobId = events[0]?.jobId ?? '';
		const reason = faultOf(stored, { seq, head, jobId, ids, sha256 });
		if (reason) return { ok: false, seq, reason };
		ids.add(stored.id);
		head = stored.hash;
	}
	return { ok: true, head };
}

function faultOf(
	stored: StoredEvent,
	expected: {
		seq: number;
		head: string;
		jobId: string;
		ids: ReadonlySet<string>;
		sha256: Sha256;
	}
): string | null {
	if (stored.seq !== expected.seq) {
		return `event ${expected.seq} is missing or out of order: found number ${stored.seq}`;
	}
	if (stored.jobId !== expected.jobId) {
		return `event ${stored.seq} belongs to job ${stored.jobId}, not to ${expected.jobId}`;
	}
	if (expected.ids.has(stored.id)) return `event ${stored.seq} repeats the id ${stored.id}`;
	if (stored.prevHash !== expected.head) {
		return `event ${stored.seq} does not follow the event before it`;
	}
	return hashOrNull(stored, expected.sha256) === stored.hash
		? null
		: `event ${stored.seq} was altered: its hash does not match its content`;
}

function hashOrNull(stored: StoredEvent, sha256: Sha256): string | null {
	try {
		return hashEvent(stored, sha256);
	} catch {
		// What has no canonical JSON was never sealed here.
		return null;
	}
}
