const PART_BYTES = 4_000_000;
const TRIES = 3;

export type SentMesh = { ok: true; hash: string } | { ok: false; reason: string };

/** Sends a mesh file to the shop's store in parts. Never throws; a part that gets lost is sent again. */
export async function sendMesh(file: Blob, onpart: (fraction: number) => void): Promise<SentMesh> {
	const upload = uploadName();
	const parts = Math.ceil(file.size / PART_BYTES);
	for (let part = 0; part < parts; part += 1) {
		const body = file.slice(part * PART_BYTES, (part + 1) * PART_BYTES);
		const kept = await post(`/api/meshes/parts?upload=${upload}&part=${part}`, body);
		if (!kept.ok) return kept;
		onpart((part + 1) / parts);
	}
	const made = await post('/api/meshes', JSON.stringify({ upload, parts }));
	if (!made.ok) return made;
	const { said } = made;
	return typeof said === 'object' &&
		said !== null &&
		'hash' in said &&
		typeof said.hash === 'string'
		? { ok: true, hash: said.hash }
		: { ok: false, reason: 'The server did not take the file. Try it once more.' };
}

/** `randomUUID` is missing on a plain http address of the shop's network. */
function uploadName(): string {
	const bytes = crypto.getRandomValues(new Uint8Array(16));
	return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

type Answer = { ok: true; said: unknown } | { ok: false; reason: string };

async function post(address: string, body: Blob | string): Promise<Answer> {
	const type = typeof body === 'string' ? 'application/json' : 'application/octet-stream';
	for (let left = TRIES; ; left -= 1) {
		try {
			const answer = await fetch(address, {
				method: 'POST',
				headers: { 'content-type': type },
				body
			});
			const said: unknown = await answer.json();
			if (answer.ok) return { ok: true, said };
			return { ok: false, reason: detailOf(said) };
		} catch {
			if (left <= 1) return { ok: false, reason: 'No answer from the server. Save once more.' };
		}
	}
}

function detailOf(said: unknown): string {
	return typeof said === 'object' &&
		said !== null &&
		'detail' in said &&
		typeof said.detail === 'string'
		? said.detail
		: 'The server did not take the file. Try it once more.';
}
