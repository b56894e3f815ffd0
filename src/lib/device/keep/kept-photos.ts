import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { postPhoto, type SentPhoto } from '../photo';
import type { KeptDatabase } from './kept-database';

/** Photos taken while the server was out of reach, by the hash their act names them with. They go with their act. */
export class KeptPhotos {
	#db: KeptDatabase;

	constructor(db: KeptDatabase) {
		this.#db = db;
	}

	/** Keeps a photo and gives the SHA-256 of its bytes. */
	async keep(photo: Blob): Promise<string> {
		// Not the browser's own: a shop's server without a certificate is no secure context.
		const hash = bytesToHex(sha256(new Uint8Array(await photo.arrayBuffer())));
		await this.#db.put('photos', photo, hash);
		return hash;
	}

	/** Sends a kept photo; the server may keep it under another hash. */
	async send(hash: string): Promise<SentPhoto> {
		const photo = await this.#db.get('photos', hash);
		// Sent before the line dropped, or by another tab.
		if (photo === undefined) return { ok: true, hash };
		return typeof photo === 'string' ? { ok: true, hash: photo } : postPhoto(photo);
	}

	/**
	 * Sends all that are kept, and lets their bytes go as soon as the server has them, save those that an act
	 * waits with: it may be sent to a server that was put back to an earlier day.
	 *
	 * @returns the server's hash of each; null when one did not get through
	 */
	async sendAll(hashes: readonly string[]): Promise<string[] | null> {
		const sent: string[] = [];
		for (const hash of hashes) {
			const answer = await this.send(hash);
			if (!answer.ok) return null;
			sent.push(answer.hash);
			// The server has it: what is left here is only room taken.
			await this.#letGo(hash, answer.hash).catch(() => {});
		}
		return sent;
	}

	/** The form may be sent again with the hash it was kept under, so what the server calls it stays. */
	async #letGo(hash: string, onServer: string): Promise<void> {
		const trx = this.#db.transaction(['acts', 'photos'], 'readwrite');
		const waiting = await trx.objectStore('acts').getAll();
		const photos = trx.objectStore('photos');
		const isNeeded = waiting.some(({ event }) => event.photos?.includes(hash));
		if (!isNeeded && (await photos.getKey(hash))) await photos.put(onServer, hash);
		await trx.done;
	}
}
