import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { inflateRawSync } from 'node:zlib';

interface Entry {
	method: number;
	packedBytes: number;
	bytes: number;
	offset: number;
}

const END = 0x06054b50;
const CENTRAL = 0x02014b50;
const LOCAL = 0x04034b50;
const END_BYTES = 22;
const LONGEST_COMMENT = 65_535;
/** One file of an export; a mesh file is the largest. */
const MOST_ENTRY_BYTES = 400_000_000;

/**
 * Reads files out of a zip one at a time. Nothing is unpacked to the disk, and no file may grow beyond
 * the size it says it has. Source: PKWARE APPNOTE 6.3, section 4.3
 */
export class ZipReader {
	readonly #handle: number;
	readonly #entries = new Map<string, Entry>();

	/** @throws Error when it is no zip, or a cut one */
	constructor(path: string) {
		this.#handle = openSync(path, 'r');
		try {
			this.#readDirectory(fstatSync(this.#handle).size);
		} catch (error) {
			closeSync(this.#handle);
			throw error;
		}
	}

	get names(): string[] {
		return [...this.#entries.keys()];
	}

	/** @throws Error when there is no such file, or it cannot be unpacked */
	read(name: string): Buffer {
		const entry = this.#entries.get(name);
		if (!entry) throw new Error(`the zip has no ${name}`);
		const head = this.#bytesAt(entry.offset, 30);
		if (head.readUInt32LE(0) !== LOCAL) throw new Error(`the zip is damaged before ${name}`);
		const start = entry.offset + 30 + head.readUInt16LE(26) + head.readUInt16LE(28);
		const packed = this.#bytesAt(start, entry.packedBytes);
		if (entry.method === 0) return packed;
		if (entry.method !== 8) throw new Error(`${name} is packed in a way that is not read here`);
		return inflateRawSync(packed, { maxOutputLength: Math.max(1, entry.bytes) });
	}

	close(): void {
		closeSync(this.#handle);
	}

	#readDirectory(size: number): void {
		const tail = this.#bytesAt(
			Math.max(0, size - END_BYTES - LONGEST_COMMENT),
			Math.min(size, END_BYTES + LONGEST_COMMENT)
		);
		let end = tail.length - END_BYTES;
		while (end >= 0 && tail.readUInt32LE(end) !== END) end -= 1;
		if (end < 0) throw new Error('it is no zip file, or a part of one');

		const count = tail.readUInt16LE(end + 10);
		const directory = this.#bytesAt(tail.readUInt32LE(end + 16), tail.readUInt32LE(end + 12));
		let at = 0;
		for (let n = 0; n < count; n += 1) {
			if (directory.readUInt32LE(at) !== CENTRAL) throw new Error('its directory is damaged');
			const nameBytes = directory.readUInt16LE(at + 28);
			const name = directory.toString('utf8', at + 46, at + 46 + nameBytes);
			const bytes = directory.readUInt32LE(at + 24);
			if (bytes > MOST_ENTRY_BYTES) throw new Error(`${name} is larger than any file of an export`);
			this.#entries.set(name, {
				method: directory.readUInt16LE(at + 10),
				packedBytes: directory.readUInt32LE(at + 20),
				bytes,
				offset: directory.readUInt32LE(at + 42)
			});
			at += 46 + nameBytes + directory.readUInt16LE(at + 30) + directory.readUInt16LE(at + 32);
		}
	}

	#bytesAt(offset: number, length: number): Buffer {
		const bytes = Buffer.alloc(length);
		if (readSync(this.#handle, bytes, 0, length, offset) !== length)
			throw new Error('it was cut off');
		return bytes;
	}
}
