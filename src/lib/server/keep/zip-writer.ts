import { createHash } from 'node:crypto';
import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { crc32, createDeflateRaw } from 'node:zlib';

/** A file in a zip, as the manifest lists it. */
export interface PackedFile {
	bytes: number;
	/** SHA-256 of the file's bytes. */
	sha256: string;
}

export type Chunks = Iterable<Uint8Array | string> | AsyncIterable<Uint8Array | string>;

interface ZipLimits {
	files: number;
	bytes: number;
}

/** Limits of the plain zip format (no zip64). Source: PKWARE APPNOTE 6.3, sections 4.4.1.4 and 4.4.8 */
const FORMAT_LIMITS: ZipLimits = { files: 65_534, bytes: 4_290_000_000 };
/** Names are UTF-8, and sizes follow the data. Source: the same, section 4.4.4, bits 11 and 3 */
const FLAGS = 0x0808;
/** 1980-01-01, the format's first day: two exports of one state are the same. */
const DOS_DATE = 0x21;

/** Writes a zip file piece by piece, so that a shop larger than the memory fits. */
export class ZipWriter {
	readonly #handle: number;
	readonly #directory: Buffer[] = [];
	#offset = 0;

	readonly #most: ZipLimits;

	/** @throws when there is a file at `path`, or it cannot be written */
	constructor(path: string, most: ZipLimits = FORMAT_LIMITS) {
		this.#handle = openSync(path, 'wx');
		this.#most = most;
	}

	/** @throws RangeError when the zip would be larger than the format allows */
	async add(name: string, chunks: Chunks, { packed = true } = {}): Promise<PackedFile> {
		const start = this.#offset;
		const method = packed ? 8 : 0;
		const nameBytes = Buffer.from(name, 'utf8');
		this.#write(localHeader(nameBytes, method));

		const sum = createHash('sha256');
		let [crc, bytes] = [0, 0];
		async function* counted(): AsyncGenerator<Buffer> {
			for await (const chunk of chunks) {
				const data = Buffer.from(chunk);
				sum.update(data);
				crc = crc32(data, crc);
				bytes += data.length;
				yield data;
			}
		}
		const dataStart = this.#offset;
		const source = Readable.from(counted(), { objectMode: false });
		const write = async (pieces: AsyncIterable<Buffer>) => {
			for await (const piece of pieces) this.#write(piece);
		};
		await (packed ? pipeline(source, createDeflateRaw(), write) : pipeline(source, write));

		const sizes = { crc, packedBytes: this.#offset - dataStart, bytes };
		this.#write(descriptor(sizes));
		this.#directory.push(directoryEntry(nameBytes, method, { ...sizes, start }));
		return { bytes, sha256: sum.digest('hex') };
	}

	/** Writes the directory at the end and waits till all of it is on the disk. Close it after. */
	finish(): void {
		const start = this.#offset;
		for (const entry of this.#directory) this.#write(entry);
		const end = Buffer.alloc(22);
		end.writeUInt32LE(0x06054b50, 0);
		end.writeUInt16LE(this.#directory.length, 8);
		end.writeUInt16LE(this.#directory.length, 10);
		end.writeUInt32LE(this.#offset - start, 12);
		end.writeUInt32LE(start, 16);
		this.#write(end);
		fsyncSync(this.#handle);
	}

	close(): void {
		closeSync(this.#handle);
	}

	#write(bytes: Uint8Array): void {
		this.#offset += writeSync(this.#handle, bytes);
		const { files: mostFiles, bytes: mostBytes } = this.#most;
		if (this.#offset <= mostBytes && this.#directory.length <= mostFiles) return;
		throw new RangeError(
			`The zip would be larger than its format allows; accepted: up to ${mostFiles} files and ${mostBytes} bytes. ` +
				'Keep a shop of this size by its database’s own means: pg_dump for PostgreSQL, npm run backup for SQLite, which copies the database file.'
		);
	}
}

interface Sizes {
	crc: number;
	packedBytes: number;
	bytes: number;
}

function localHeader(name: Buffer, method: number): Buffer {
	const header = Buffer.alloc(30);
	header.writeUInt32LE(0x04034b50, 0);
	header.writeUInt16LE(20, 4);
	header.writeUInt16LE(FLAGS, 6);
	header.writeUInt16LE(method, 8);
	header.writeUInt16LE(DOS_DATE, 12);
	header.writeUInt16LE(name.length, 26);
	return Buffer.concat([header, name]);
}

function descriptor({ crc, packedBytes, bytes }: Sizes): Buffer {
	const after = Buffer.alloc(16);
	after.writeUInt32LE(0x08074b50, 0);
	after.writeUInt32LE(crc, 4);
	after.writeUInt32LE(packedBytes, 8);
	after.writeUInt32LE(bytes, 12);
	return after;
}

function directoryEntry(
	name: Buffer,
	method: number,
	{ crc, packedBytes, bytes, start }: Sizes & { start: number }
): Buffer {
	const entry = Buffer.alloc(46);
	entry.writeUInt32LE(0x02014b50, 0);
	entry.writeUInt16LE(20, 4);
	entry.writeUInt16LE(20, 6);
	entry.writeUInt16LE(FLAGS, 8);
	entry.writeUInt16LE(method, 10);
	entry.writeUInt16LE(DOS_DATE, 14);
	entry.writeUInt32LE(crc, 16);
	entry.writeUInt32LE(packedBytes, 20);
	entry.writeUInt32LE(bytes, 24);
	entry.writeUInt16LE(name.length, 28);
	entry.writeUInt32LE(start, 42);
	return Buffer.concat([entry, name]);
}
