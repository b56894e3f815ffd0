const verifier = new URL('../../scripts/verify.mjs', import.meta.url).href;

/** The very file that is handed out to verify records with. */
export async function verifierOf(): Promise<(text: string) => string | null> {
	const { faultOf } = (await import(/* @vite-ignore */ verifier)) as {
		faultOf: (text: string) => string | null;
	};
	return faultOf;
}

/** What a server says of a job: its record's text and the ids in it. */
export async function recordOf(
	url: string,
	cookie: string,
	jobId: string
): Promise<{ text: string; ids: string[] }> {
	const response = await fetch(`${url}/api/jobs/${jobId}/record.json`, { headers: { cookie } });
	const text = await response.text();
	if (!response.ok) throw new Error(`the record of ${jobId}: ${response.status} ${text}`);
	const { events } = JSON.parse(text) as { events: Array<{ id: string }> };
	return { text, ids: events.map(({ id }) => id) };
}
