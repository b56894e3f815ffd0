import { durationText } from '$lib/core/quantity/duration-text';

/** What a person reads after a wrong PIN, and how long they wait before another try. */
export function wrongPinWords(waitS: number): string {
	return `That is not the PIN. ${waitS > 0 ? `Wait ${durationText(waitS)}, then try` : 'Try'} again.`;
}
