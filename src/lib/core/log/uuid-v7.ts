import { bytesToHex } from '@noble/hashes/utils.js';

const LATEST_MS = 2 ** 48 - 1;

/**
 * An id that sorts by the time it was made: a UUID of version 7.
 *
 * @param atMs - milliseconds since 1970-01-01T00:00:00Z, 0 to 2^48 − 1
 * @param random - ten random bytes, of which 74 bits are used
 * @throws RangeError for a time or a number of bytes out of range. Source: RFC 9562 (2024), 5.7
 */
export function uuidV7(atMs: number, random: Uint8Array): string {
	if (!Number.isInteger(atMs) || atMs < 0 || atMs > LATEST_MS) {
		throw new RangeError(`atMs is ${atMs}; accepted: a whole number from 0 to ${LATEST_MS}`);
	}
	if (random.length !== 10) {
		throw new RangeError(`random has ${random.length} bytes; accepted: 10`);
	}
	const bytes = new Uint8Array(16);
	new DataView(bytes.buffer).setBigUint64(0, BigInt(atMs) << 16n);
	bytes.set(random, 6);
	bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f);
	bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f);
	const hex = bytesToHex(bytes);
	return [
		[0, 8],
		[8, 12],
		[12, 16],
		[16, 20],
		[20, 32]
	]
		.map(([from, to]) => hex.slice(from, to))
		.join('-');
}
