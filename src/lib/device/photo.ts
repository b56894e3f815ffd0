const LONGEST_PX = 1600;
const QUALITY = 0.82;
/** For a photo of some hundred kB over a slow line. */
const PATIENCE_MS = 60_000;

/**
 * A photo as it is kept: at most 1600 px on its longer side, JPEG. Drawing it anew also leaves behind
 * what a camera writes into a file, such as place and device.
 */
async function shrink(file: File): Promise<Blob> {
	const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
	const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
	const canvas = document.createElement('canvas');
	canvas.width = Math.max(1, Math.round(picture.width * scale));
	canvas.height = Math.max(1, Math.round(picture.height * scale));
	canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
	picture.close();
	return new Promise((resolve, reject) => {
		canvas.toBlob(
			(blob) => (blob ? resolve(blob) : reject(new Error('the picture could not be written'))),
			'image/jpeg',
			QUALITY
		);
	});
}

export type SentPhoto =
	| { ok: true; hash: string }
	/** `stoppedBy`: nothing is wrong with the photo itself. */
	| { ok: false; reason: string; stoppedBy?: 'no answer' | 'sign in' };

/** A photo as the shop keeps it, or why this device cannot read it. */
export async function shrunkPhoto(file: File): Promise<Blob | { ok: false; reason: string }> {
	try {
		return await shrink(file);
	} catch {
		return { ok: false, reason: `${file.name} is not a picture this device can read.` };
	}
}

/** Sends a shrunk photo to the shop's store. Never throws. */
export async function postPhoto(body: Blob): Promise<SentPhoto> {
	try {
		const answer = await fetch('/api/photos', {
			method: 'POST',
			headers: { 'content-type': body.type },
			body,
			signal: AbortSignal.timeout(PATIENCE_MS)
		});
		if (answer.status === 401) {
			return { ok: false, reason: 'Sign in first.', stoppedBy: 'sign in' };
		}
		if (answer.status === 429 || answer.status >= 500) {
			return { ok: false, reason: 'The server is busy.', stoppedBy: 'no answer' };
		}
		const said: unknown = await answer.json();
		if (typeof said === 'object' && said !== null) {
			if ('hash' in said && typeof said.hash === 'string') return { ok: true, hash: said.hash };
			if ('detail' in said && typeof said.detail === 'string') {
				return { ok: false, reason: said.detail };
			}
		}
		return { ok: false, reason: 'The server did not take the photo. Try it once more.' };
	} catch {
		return { ok: false, reason: 'No answer from the server.', stoppedBy: 'no answer' };
	}
}

/** Shrinks a photo and sends it to the shop's store. Never throws: a photo must not stop the work. */
export async function sendPhoto(file: File): Promise<SentPhoto> {
	const body = await shrunkPhoto(file);
	return 'ok' in body ? body : postPhoto(body);
}
