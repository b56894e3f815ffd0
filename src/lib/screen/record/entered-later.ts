/** Nearer than this, what was done and when the server took it are one; common practice, no source. */
const NEAR_MS = 120_000;

/** Whether an entry was written down at another time than the one it says it was done at. */
export function isEnteredLater({ at, recordedAt }: { at: string; recordedAt: string }): boolean {
	return Math.abs(Date.parse(recordedAt) - Date.parse(at)) > NEAR_MS;
}
