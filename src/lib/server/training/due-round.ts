import { contentHash } from '$lib/core/content/content-hash';
import type { HazardId } from '$lib/core/content/vocabulary';
import type { Answered } from '$lib/core/training/spacing';

interface Due {
	personId: string;
	kind: HazardId;
	/** What this person answered of this kind before, in order of time. */
	before: readonly Answered[];
}

/** For how long a round may lie open: the next day other questions may be due. */
const LONGEST_OPEN_MS = 86_400_000;

/**
 * Id of the one round that a person can answer now, which is also its seed. It follows from what was answered
 * before, so that nobody loads the page till the questions suit.
 */
export function dueRoundId({ personId, kind, before }: Due): string {
	return contentHash(`${personId} ${kind} ${before.length}`);
}

/**
 * Whether a round that comes back is the one this person has to answer now: by its id, drawn after what was
 * answered last and within a day. The instant is the sender's word, and an earlier one would leave out what
 * was missed since.
 */
export function isDue(
	{ round, drawnAt, at }: { round: string; drawnAt: string; at: string },
	due: Due
): boolean {
	const drawn = Date.parse(drawnAt);
	return (
		round === dueRoundId(due) &&
		drawn >= Date.parse(due.before.at(-1)?.at ?? drawnAt) &&
		drawn <= Date.parse(at) &&
		drawn > Date.parse(at) - LONGEST_OPEN_MS
	);
}
