/** A line that is up and leads nowhere answers nothing for minutes. */
const PROBE_MS = 5000;

/** Whether the server itself answers at this moment, and not whatever stands between it and this device. */
export async function serverAnswers(): Promise<boolean> {
	try {
		const answer = await fetch('/healthz', {
			cache: 'no-store',
			signal: AbortSignal.timeout(PROBE_MS)
		});
		await answer.json();
		return answer.ok;
	} catch {
		return false;
	}
}
