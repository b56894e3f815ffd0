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
		return photo ? postPhoto(photo) : { ok: true, hash };
	}

	/** Sends all that are kept. @returns the server's hash of each; null when one did not get through */
	async sendAll(hashes: readonly string[]): Promise<string[] | null> {
		const sent: string[] = [];
		for (const hash of hashes) {
			const answer = await this.send(hash);
			if (!answer.ok) return null;
			sent.push(answer.hash);
		}
		return sent;
	}
}
